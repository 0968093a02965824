using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Studies.Charting;

/// <summary>A chart of a file, judged, and what its rules cost.</summary>
/// <param name="Question">What was asked.</param>
/// <param name="Table">The file.</param>
/// <param name="Chart">Points, limits, signals.</param>
/// <param name="Alone">The price of each rule used alone, in the order of the chart's rules.</param>
/// <param name="Together">The price of all rules together.</param>
public sealed record ChartResult(
    ChartQuestion Question, ChartTable Table, ControlChart Chart, IReadOnlyList<RulePrice> Alone, RulePrice Together);

/// <summary>Is the process steady? Draws the chart of a file of readings and prices the rules it is watched with.</summary>
public static class ChartStudy
{
    /// <exception cref="FaultsException">The file cannot be charted, or a value given does not go with its unit.</exception>
    public static ChartResult Answer(string path, ChartQuestion question)
    {
        ChartTable table = ChartTable.Read(path, question.Kind);
        ControlChart chart = Draw(table, question);
        RulePrice together = Price(chart, chart.Rules, question);
        return new(question, table, chart, chart.Rules.Count == 1 ? [together] : [.. chart.Rules.Select(r => Price(chart, [r], question))], together);
    }

    private static ControlChart Draw(ChartTable table, ChartQuestion q)
    {
        ChartBasis basis = new(q.Base, q.Centre?.In(table.Unit, table.File, "--centre"), q.Sd?.In(table.Unit, table.File, "--sd"), table.PhaseStarts);
        return q.Kind switch
        {
            ChartKind.Individuals => IndividualsChart.Draw(table.Values, basis, q.Rules),
            ChartKind.Averages => AveragesChart.Draw(table.Values, table.SubgroupStarts!, q.Measure, basis, q.Rules),
            ChartKind.Ewma => EwmaChart.Draw(table.Values, q.Weight, q.Width, q.FromStart, basis),
            ChartKind.Cusum => CusumChart.Draw(table.Values, q.Allowance_sd, q.Decision_sd, basis),
            ChartKind.Counts => CountsChart.Draw(table.Values, table.Sizes, basis, q.Rules),
            _ => SharesChart.Draw(table.Values, table.Sizes!, basis, q.Rules),
        };
    }

    private static RulePrice Price(ControlChart chart, IReadOnlyList<RunRule> rules, ChartQuestion q) => q.Kind switch
    {
        ChartKind.Ewma => SmoothedRunLength.EwmaPrice(q.Weight, q.Width),
        ChartKind.Cusum => SmoothedRunLength.CusumPrice(q.Allowance_sd, q.Decision_sd),
        ChartKind.Counts or ChartKind.Shares => RulePrice.OfCounts(chart, rules, q.Seed),
        _ => RulePrice.Of(rules, q.Seed),
    };
}
