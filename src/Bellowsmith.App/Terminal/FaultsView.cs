using Bellowsmith.Kits;

namespace Bellowsmith.App.Terminal;

internal static class FaultsView
{
    public static void Show(Screen screen, IReadOnlyList<Fault> faults)
    {
        screen.Warn(faults.Count == 1 ? "The input has a fault; nothing was computed." : $"The input has {faults.Count} faults; nothing was computed.");
        foreach (IGrouping<string, Fault> file in faults.GroupBy(f => f.File))
        {
            screen.Blank();
            screen.Title(file.Key);
            foreach (Fault fault in file)
            {
                screen.Say(fault.Where);
                screen.Point("found", fault.Found);
                screen.Point("allowed", fault.Allowed);
                screen.Point("to mend it", fault.Fix);
            }
        }
    }
}
