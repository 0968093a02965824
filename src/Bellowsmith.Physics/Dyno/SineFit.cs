using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Dyno;

/// <summary>
/// x(t) = x0 + X·sin(ω·t + φ) by least squares, all four at once by Gauss–Newton from the crossings of mid-stroke.
/// <paramref name="Miss"/> is the root mean square of what is left.
/// </summary>
internal readonly record struct SineFit(double AngularFrequency, double Amplitude, double Offset, double StartPhase, double Miss)
{
    private const int Steps = 8, Unknowns = 4;

    /// <summary>θ at a time, −π to π.</summary>
    public double Phase(double time_s) => Math.IEEERemainder(AngularFrequency * time_s + StartPhase, 2 * Math.PI);

    /// <summary>Null where the position does not cross mid-stroke twice.</summary>
    public static SineFit? Of(IReadOnlyList<DynoSample> samples)
    {
        double omega = FirstGuess(samples);
        if (!(omega > 0)) return null;
        double middle = (samples[0].Time_s + samples[^1].Time_s) / 2;
        double[] found = new double[Unknowns];
        for (int step = 0; step < Steps; step++)
        {
            if (Solve(samples, middle, omega, found, step == 0 ? Unknowns - 1 : Unknowns) is not { } solved) return null;
            found = solved;
            omega += found[3];
            if (!(omega > 0)) return null;
        }

        double amplitude = Math.Sqrt(found[1] * found[1] + found[2] * found[2]);
        SineFit fit = new(omega, amplitude, found[0], Math.Atan2(found[2], found[1]) - omega * middle, 0);
        return fit with { Miss = Math.Sqrt(samples.Average(s => Square(s.Position_m - fit.At(s.Time_s)))) };
    }

    private double At(double time_s) => Offset + Amplitude * Math.Sin(AngularFrequency * time_s + StartPhase);

    // x = x0 + a·sin + b·cos, and the change of ω that lowers what is left. At first a and b alone, as ω's column needs them.
    private static double[]? Solve(IReadOnlyList<DynoSample> samples, double middle, double omega, double[] last, int unknowns)
    {
        double[] matrix = new double[unknowns * unknowns], right = new double[Unknowns], column = new double[Unknowns];
        foreach (DynoSample sample in samples)
        {
            double t = sample.Time_s - middle;
            (double sine, double cosine) = Math.SinCos(omega * t);
            (column[0], column[1], column[2], column[3]) = (1, sine, cosine, t * (last[1] * cosine - last[2] * sine));
            for (int i = 0; i < unknowns; i++)
            {
                right[i] += column[i] * sample.Position_m;
                for (int j = 0; j <= i; j++) matrix[i * unknowns + j] += column[i] * column[j];
            }
        }

        if (!Cholesky.Factor(matrix, unknowns)) return null;
        Cholesky.Solve(matrix, unknowns, right.AsSpan(0, unknowns));
        return right;
    }

    // Half a turn from one crossing of mid-stroke to the next; a crossing counts once the position has left the middle fifth.
    private static double FirstGuess(IReadOnlyList<DynoSample> samples)
    {
        double least = samples.Min(s => s.Position_m), greatest = samples.Max(s => s.Position_m), middle = (least + greatest) / 2;
        double first = double.NaN, last = double.NaN, crossing = double.NaN;
        int side = 0, crossings = 0;
        for (int i = 0; i < samples.Count; i++)
        {
            double away = samples[i].Position_m - middle;
            if (i > 0 && samples[i - 1].Position_m - middle is var before && before * away <= 0 && before != away)
                crossing = samples[i - 1].Time_s + (samples[i].Time_s - samples[i - 1].Time_s) * before / (before - away);
            if (Math.Abs(away) < (greatest - least) / 10 || Math.Sign(away) == side) continue;
            if (!double.IsNaN(crossing))
            {
                (first, last) = (double.IsNaN(first) ? crossing : first, crossing);
                crossings++;
            }

            side = Math.Sign(away);
        }

        return crossings < 2 ? double.NaN : Math.PI * (crossings - 1) / (last - first);
    }

    private static double Square(double value) => value * value;
}
