namespace Bellowsmith.Physics.Fitting;

/// <summary>
/// Readings that lie further from their own sweep than scatter explains: five robust deviations and a thousandth of the mean
/// force. They are named to the user and kept out of the curve.
/// </summary>
internal static class WildReadings
{
    private const double FarOutBy = 5, LeastShareOfForce = 1e-3, MostSetAside = 0.05;

    /// <summary>
    /// The curve without them, and which they are by place among the rows. A wild reading drags the curve off its neighbours:
    /// those that lie well on the curve of the rest come back.
    /// </summary>
    public static (AreaModel Area, Dictionary<int, SetAsideRow> Wild) FitWithout(
        SpringRow[] rows, int[] sweepOf, int sweeps, bool ownEffects)
    {
        AreaModel area = Fit(rows, sweepOf, sweeps, ownEffects, []);
        Dictionary<int, SetAsideRow> suspects = FarOut(rows, sweepOf, area, 4 * MostSetAside);
        if (suspects.Count == 0) return (area, suspects);
        area = Fit(rows, sweepOf, sweeps, ownEffects, suspects);
        Dictionary<int, SetAsideRow> wild = FarOut(rows, sweepOf, area, 1).Where(f => suspects.ContainsKey(f.Key)).ToDictionary();
        if (wild.Count > MostSetAside * rows.Length) wild.Clear();
        return (Fit(rows, sweepOf, sweeps, ownEffects, wild), wild);
    }

    public static T[] Kept<T>(T[] rows, Dictionary<int, SetAsideRow> without) =>
        without.Count == 0 ? rows : [.. rows.Where((_, i) => !without.ContainsKey(i))];

    private static AreaModel Fit(SpringRow[] rows, int[] sweepOf, int sweeps, bool ownEffects, Dictionary<int, SetAsideRow> without)
    {
        AreaModel area = new(Kept(rows, without), Kept(sweepOf, without), sweeps, ownEffects);
        area.Regression.Solve();
        return area;
    }

    // None where they are more than a share, for then the curve is wrong, not the readings.
    private static Dictionary<int, SetAsideRow> FarOut(SpringRow[] rows, int[] sweepOf, AreaModel area, double mostShare)
    {
        double[] miss = rows.Select((r, i) => r.Force_N - area.Predict_N(r, sweepOf[i])).ToArray();
        double deviation = 1.4826 * Median(miss.Select(Math.Abs));
        double least = LeastShareOfForce * rows.Average(r => Math.Abs(r.Force_N));
        Dictionary<int, SetAsideRow> far = [];
        for (int i = 0; i < rows.Length; i++)
            if (Math.Abs(miss[i]) > Math.Max(FarOutBy * deviation, least))
                far[i] = new(rows[i].Line, rows[i].Height_m, rows[i].GaugePressure_Pa, miss[i], miss[i] / Math.Max(deviation, 1e-9));
        return far.Count > mostShare * rows.Length ? [] : far;
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
