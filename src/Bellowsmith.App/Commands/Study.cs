using Bellowsmith.App.Terminal;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;

namespace Bellowsmith.App.Commands;

/// <summary>Runs one study command: answer or faults, and the exit code that says which.</summary>
internal static class Study
{
    public const int Answered = 0, Faulty = 2, NoSolution = 3;

    public static int Run(bool json, Func<int> answer)
    {
        try
        {
            return answer();
        }
        catch (FaultsException faulty)
        {
            // A program reads an array; a person at a terminal who did not ask for JSON reads sentences.
            if (json || Console.IsErrorRedirected) Console.Error.WriteLine(AnswerJson.Write(faulty.Faults));
            else FaultsView.Show(Screen.Error(), faulty.Faults);
            return Faulty;
        }
    }
}
