using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Fitting;

/// <summary>
/// Penalised regression of rows that come in sweeps: y = x·β + z·u(sweep) + e, where groups of β carry a roughness penalty
/// and u are each sweep's own offset, tilt and bow. A penalty weight is a ratio of variances, so smoothness and sweep
/// scatter come from the data together, by restricted maximum likelihood with the fixed-point step of
/// [Schall 1991], generalised by [Wood Fasiolo 2017].
/// </summary>
internal sealed class SweepRegression
{
    private const int MostSteps = 60;
    private const double Settled = 0.02;

    // Sweeps free to lie anywhere would leave nothing to tell the common curve by: their departures are held within some
    // 100 standard deviations of one reading, far beyond what a load frame shows.
    private const double LeastPenalty = 1e-9, LeastLevel = 1e-4, Greatest = 1e8;

    private readonly Sweep[] _sweeps;
    private readonly List<Penalty> _penalties = [];
    private readonly int _n, _m;
    private readonly double[] _levelWeights;
    private readonly double[] _system, _right, _inverse, _solved, _small;
    private int _rows;
    private double _yy;

    public SweepRegression(int columns, int levels, int sweeps)
    {
        (_n, _m) = (columns, levels);
        _sweeps = new Sweep[sweeps];
        for (int s = 0; s < sweeps; s++) _sweeps[s] = new Sweep(columns, levels);
        _levelWeights = Enumerable.Repeat(1.0, levels).ToArray();
        (_system, _inverse) = (new double[_n * _n], new double[_n * _n]);
        (_right, Coefficients) = (new double[_n], new double[_n]);
        (_solved, _small) = (new double[_m * _n], new double[_m * _m]);
    }

    public double[] Coefficients { get; }

    /// <summary>Variance of a single reading about its own sweep.</summary>
    public double Variance { get; private set; }

    /// <summary>Standard deviation of each level of a sweep's own departure.</summary>
    public double[] LevelDeviations => _levelWeights.Select(w => Math.Sqrt(Variance / w)).ToArray();

    public int SweepCount => _sweeps.Length;

    /// <summary>Penalises differences of an order (0: the values themselves) of a run of coefficients.</summary>
    public void Penalise(int start, int count, int order) => _penalties.Add(new Penalty(start, count, order));

    public void Add(int sweep, ReadOnlySpan<double> x, ReadOnlySpan<double> z, double y)
    {
        _sweeps[sweep].AddDesign(x, z);
        _rows++;
        AddReading(sweep, x, z, y);
    }

    /// <summary>Forgets what was read, not where: give every row's reading again with <see cref="AddReading"/>.</summary>
    public void ForgetReadings()
    {
        foreach (Sweep sweep in _sweeps) sweep.ForgetReadings();
        _yy = 0;
    }

    public void AddReading(int sweep, ReadOnlySpan<double> x, ReadOnlySpan<double> z, double y)
    {
        _sweeps[sweep].AddReading(x, z, y);
        _yy += y * y;
    }

    /// <summary>The departure of a reading's own sweep from the common curve at that reading.</summary>
    public double Departure(int sweep, ReadOnlySpan<double> z) => Cholesky.Dot(_sweeps[sweep].Own, z[.._m]);

    public void Solve()
    {
        for (int step = 0; step < MostSteps; step++)
        {
            Assemble(without: -1);
            Cholesky.Factor(_system, _n);
            _right.CopyTo(Coefficients, 0);
            Cholesky.Solve(_system, _n, Coefficients);
            Cholesky.Inverse(_system, _n, _inverse);
            if (Reweigh() < Settled) break;
        }
    }

    /// <summary>
    /// Coefficients with one sweep left out (none: −1), weights kept, into <paramref name="coefficients"/>. False where the rest cannot
    /// carry the model.
    /// </summary>
    public bool Without(int sweep, Span<double> coefficients)
    {
        Assemble(sweep);
        if (!Cholesky.Factor(_system, _n)) return false;
        _right.CopyTo(coefficients);
        Cholesky.Solve(_system, _n, coefficients);
        return true;
    }

    /// <summary>
    /// What smoothing may have hidden, as columns d with Σ d·dᵀ = σ²·V·S·V: the penalty's share of the posterior covariance
    /// [Nychka 1988]. Call after <see cref="Solve"/>.
    /// </summary>
    public IEnumerable<double[]> SmoothingShares()
    {
        foreach (Penalty penalty in _penalties)
        {
            for (int row = 0; row < penalty.Rank; row++)
            {
                double[] share = new double[_n];
                for (int k = 0; k <= penalty.Order; k++)
                    Cholesky.AddScaled(share, _inverse.AsSpan((penalty.Start + row + k) * _n, _n), penalty.Stencil[k]);
                double scale = Math.Sqrt(Variance * penalty.Weight);
                for (int i = 0; i < _n; i++) share[i] *= scale;
                yield return share;
            }
        }
    }

    private void Assemble(int without)
    {
        Array.Clear(_system);
        Array.Clear(_right);
        for (int s = 0; s < _sweeps.Length; s++)
        {
            if (s == without) continue;
            Sweep sweep = _sweeps[s];
            Cholesky.AddScaled(_system, sweep.XX, 1);
            Cholesky.AddScaled(_right, sweep.XY, 1);
            if (_m > 0) Eliminate(sweep);
        }

        foreach (Penalty penalty in _penalties) penalty.AddTo(_system, _n);
    }

    // Removes the sweep's own effects: X'X − X'Z (Z'Z + Λ)⁻¹ Z'X, with W = L⁻¹ Z'X so that the product is WᵀW.
    private void Eliminate(Sweep sweep)
    {
        sweep.Weigh(_levelWeights);
        sweep.ZX.CopyTo(_solved, 0);
        Span<double> own = stackalloc double[_m];
        sweep.ZY.CopyTo(own);
        for (int k = 0; k < _m; k++)
        {
            Span<double> row = _solved.AsSpan(k * _n, _n);
            for (int l = 0; l < k; l++)
            {
                Cholesky.AddScaled(row, _solved.AsSpan(l * _n, _n), -sweep.Factor[k * _m + l]);
                own[k] -= sweep.Factor[k * _m + l] * own[l];
            }

            double scale = 1 / sweep.Factor[k * _m + k];
            for (int i = 0; i < _n; i++) row[i] *= scale;
            own[k] *= scale;
            for (int i = 0; i < _n; i++)
                Cholesky.AddScaled(_system.AsSpan(i * _n, i + 1), row[..(i + 1)], -row[i]);
            Cholesky.AddScaled(_right, row, -own[k]);
        }
    }

    // One step for every weight: λ = σ²·(effective parameters)/(penalised size). Returns the greatest change of a log.
    private double Reweigh()
    {
        int penalties = _penalties.Count;
        Span<double> freedom = stackalloc double[penalties + _m], size = stackalloc double[penalties + _m];
        double spent = _n, residual = _yy;
        foreach (Sweep sweep in _sweeps) residual -= Cholesky.Dot(Coefficients, sweep.XY);
        for (int j = 0; j < penalties; j++)
        {
            Penalty penalty = _penalties[j];
            freedom[j] = penalty.Rank - penalty.Weight * penalty.Trace(_inverse, _n);
            size[j] = penalty.Size(Coefficients);
            residual -= penalty.Weight * size[j];
            spent += freedom[j] - penalty.Rank;
        }

        for (int s = 0; s < _sweeps.Length && _m > 0; s++)
        {
            Sweep sweep = _sweeps[s];
            sweep.SolveOwn(Coefficients);
            OwnCovariance(sweep);
            for (int k = 0; k < _m; k++)
            {
                double square = sweep.Own[k] * sweep.Own[k], free = 1 - _levelWeights[k] * _small[k * _m + k];
                freedom[penalties + k] += free;
                size[penalties + k] += square;
                residual -= _levelWeights[k] * square + sweep.Own[k] * sweep.ZY[k];
                spent += free;
            }
        }

        Variance = Math.Max(residual, 1e-15 * _yy) / Math.Max(_rows - spent, 1);
        double change = 0;
        for (int j = 0; j < penalties; j++)
            (_penalties[j].Weight, change) = Step(_penalties[j].Weight, LeastPenalty, freedom[j], size[j], change);
        for (int k = 0; k < _m; k++)
            (_levelWeights[k], change) = Step(_levelWeights[k], LeastLevel, freedom[penalties + k], size[penalties + k], change);
        return change;
    }

    private (double Weight, double Change) Step(double old, double least, double freedom, double size, double change)
    {
        double next = Math.Clamp(Variance * Math.Max(freedom, 1e-9) / Math.Max(size, 1e-300), least, Greatest);
        bool idle = freedom < 1e-3 || next == least || next == Greatest;
        return (next, idle ? change : Math.Max(change, Math.Abs(Math.Log(next / old))));
    }

    // Diagonal of the own effects' covariance over σ²: M⁻¹ + M⁻¹ Z'X V X'Z M⁻¹.
    private void OwnCovariance(Sweep sweep)
    {
        Cholesky.Inverse(sweep.Factor, _m, _small);
        Span<double> row = stackalloc double[_n], image = stackalloc double[_n];
        Span<double> diagonal = stackalloc double[_m];
        for (int k = 0; k < _m; k++)
        {
            row.Clear();
            for (int l = 0; l < _m; l++) Cholesky.AddScaled(row, sweep.ZX.AsSpan(l * _n, _n), _small[k * _m + l]);
            for (int i = 0; i < _n; i++) image[i] = Cholesky.Dot(_inverse.AsSpan(i * _n, _n), row);
            diagonal[k] = Cholesky.Dot(row, image);
        }

        for (int k = 0; k < _m; k++) _small[k * _m + k] += diagonal[k];
    }

    private sealed class Sweep(int n, int m)
    {
        public double[] XX { get; } = new double[n * n];
        public double[] XY { get; } = new double[n];
        public double[] ZX { get; } = new double[m * n];
        public double[] ZZ { get; } = new double[m * m];
        public double[] ZY { get; } = new double[m];
        public double[] Factor { get; } = new double[m * m];
        public double[] Own { get; } = new double[m];

        public void AddDesign(ReadOnlySpan<double> x, ReadOnlySpan<double> z)
        {
            for (int i = 0; i < n; i++)
            {
                if (x[i] == 0) continue;
                Cholesky.AddScaled(XX.AsSpan(i * n, i + 1), x[..(i + 1)], x[i]);
            }

            for (int k = 0; k < m; k++)
            {
                Cholesky.AddScaled(ZX.AsSpan(k * n, n), x, z[k]);
                Cholesky.AddScaled(ZZ.AsSpan(k * m, m), z, z[k]);
            }
        }

        public void AddReading(ReadOnlySpan<double> x, ReadOnlySpan<double> z, double y)
        {
            Cholesky.AddScaled(XY, x, y);
            Cholesky.AddScaled(ZY, z, y);
        }

        public void ForgetReadings()
        {
            Array.Clear(XY);
            Array.Clear(ZY);
        }

        public void Weigh(ReadOnlySpan<double> weights)
        {
            ZZ.CopyTo(Factor, 0);
            for (int k = 0; k < m; k++) Factor[k * m + k] += weights[k];
            Cholesky.Factor(Factor, m);
        }

        public void SolveOwn(ReadOnlySpan<double> coefficients)
        {
            for (int k = 0; k < m; k++) Own[k] = ZY[k] - Cholesky.Dot(ZX.AsSpan(k * n, n), coefficients);
            Cholesky.Solve(Factor, m, Own);
        }
    }

    private sealed class Penalty(int start, int count, int order)
    {
        public int Start => start;
        public int Order => order;
        public int Rank => count - order;
        public double[] Stencil { get; } = Differences(order);
        public double Weight { get; set; } = 1;

        public void AddTo(Span<double> system, int n)
        {
            for (int row = 0; row < Rank; row++)
                for (int i = 0; i <= order; i++)
                    for (int j = 0; j <= i; j++)
                        system[(start + row + i) * n + start + row + j] += Weight * Stencil[i] * Stencil[j];
        }

        public double Size(ReadOnlySpan<double> coefficients)
        {
            double sum = 0;
            for (int row = 0; row < Rank; row++)
            {
                double difference = 0;
                for (int i = 0; i <= order; i++) difference += Stencil[i] * coefficients[start + row + i];
                sum += difference * difference;
            }

            return sum;
        }

        public double Trace(ReadOnlySpan<double> inverse, int n)
        {
            double sum = 0;
            for (int row = 0; row < Rank; row++)
                for (int i = 0; i <= order; i++)
                    for (int j = 0; j <= order; j++)
                        sum += Stencil[i] * Stencil[j] * inverse[(start + row + i) * n + start + row + j];
            return sum;
        }

        private static double[] Differences(int order)
        {
            double[] stencil = [1];
            for (int k = 0; k < order; k++)
            {
                double[] next = new double[stencil.Length + 1];
                for (int i = 0; i < stencil.Length; i++)
                {
                    next[i] -= stencil[i];
                    next[i + 1] += stencil[i];
                }

                stencil = next;
            }

            return stencil;
        }
    }
}
