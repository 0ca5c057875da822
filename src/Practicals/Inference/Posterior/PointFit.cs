namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// One point held against a group's readings: parts and amounts integrated out as normal variables, each reading with the
/// variance of its noise and rounding. Used over and over by one thread; every call overwrites the last.
/// </summary>
internal sealed class PointFit
{
    private const double HalfLogTwoPi = 0.91893853320467274178;

    private readonly PointTable table;
    private readonly Unknowns unknowns;
    private readonly WeighedRow[] rows;
    private readonly double[] slopes;
    private readonly double[] factor;
    private readonly double[] solved;
    private readonly double constant;
    private readonly bool plain;
    private readonly int[] places;
    private readonly double[] weight;
    private double logWidths;
    private readonly int weighings;
    private readonly int unknownCount;
    private readonly int amounts;

    public PointFit(PointTable table, Unknowns unknowns, WeighedRow[] rows)
    {
        this.table = table;
        this.unknowns = unknowns;
        this.rows = rows;
        weighings = table.Weighings;
        unknownCount = unknowns.Count;
        amounts = table.Amounts;
        weight = [.. rows.Select(r => 1 / r.Variance)];
        slopes = new double[rows.Length * unknowns.Count];
        Intercepts = new double[rows.Length];
        factor = new double[unknowns.Count * unknowns.Count];
        solved = new double[unknowns.Count];
        Estimates = new double[unknowns.Count];
        Pulls = new double[rows.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            for (int c = 0; c < unknowns.Parts; c++)
            {
                slopes[(i * unknowns.Count) + c] = rows[i].Weighings.Sum(w => w.Coefficient * unknowns.PartAt(w.Weighing, c));
            }
        }

        // By far the commonest case has a path of its own: one vessel, one amount, readings only.
        plain = unknowns is { Parts: 1, Count: 2 } && rows.All(r => r.IsReading && r.Places[0].Coefficient == 1);
        places = [.. rows.Select(r => r.Places[0].Weighing)];
        constant = (0.5 * unknowns.Precisions.Sum(Math.Log)) - rows.Sum(r => HalfLogTwoPi + (0.5 * Math.Log(r.Variance)));
    }

    /// <summary>Parts and amounts as the readings tell them at this point, in g.</summary>
    public double[] Estimates { get; }

    /// <summary>The amounts among them.</summary>
    public ReadOnlySpan<double> Amounts => Estimates.AsSpan(unknowns.Parts);

    /// <summary>Residual of each reading over its variance, in 1/g.</summary>
    public double[] Pulls { get; }

    /// <summary>What each row shows without parts and amounts, in g.</summary>
    public double[] Intercepts { get; }

    /// <summary>Natural logarithm of the density of the readings, in 1/g each.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Fits a point.</summary>
    public void Fit(int point, ReadOnlySpan<double> grams)
    {
        if (plain)
        {
            FitTwo(point, grams);
            return;
        }

        Load(point);
        int d = unknownCount;
        Assemble(grams);
        double logDeterminant = Factorise(d);
        Solve(Estimates);
        double sum = 0;
        for (int i = 0; i < rows.Length; i++)
        {
            double residual = grams[i] - Intercepts[i];
            for (int c = 0; c < d; c++)
            {
                residual -= slopes[(i * d) + c] * Estimates[c];
            }

            Pulls[i] = residual * weight[i];
            sum += residual * Pulls[i];
        }

        for (int c = 0; c < d; c++)
        {
            double away = Estimates[c] - unknowns.Means[c];
            sum += away * away * unknowns.Precisions[c];
        }

        LogEvidence = constant - logWidths - logDeterminant - (sum / 2);
    }

    /// <summary>An element of the precision matrix of the readings at the point fitted last, in 1/g²: the inverse of their
    /// covariance with parts and amounts integrated out.</summary>
    public double Precision(int i, int j)
    {
        int d = unknownCount;
        for (int c = 0; c < d; c++)
        {
            solved[c] = slopes[(j * d) + c];
        }

        Solve(solved);
        double sum = 0;
        for (int c = 0; c < d; c++)
        {
            sum += slopes[(i * d) + c] * solved[c];
        }

        return ((i == j ? 1 : 0) - (sum * weight[j])) * weight[i];
    }

    /// <summary>Variance in g² of a straight line in parts and amounts at the point fitted last.</summary>
    public double VarianceOf(ReadOnlySpan<double> line)
    {
        line.CopyTo(solved);
        Solve(solved);
        double sum = 0;
        for (int c = 0; c < line.Length; c++)
        {
            sum += line[c] * solved[c];
        }

        return sum;
    }

    /// <summary>How far each row moves when parts and amounts move by one standard deviation along each axis of their law at
    /// the point fitted last, in g: row by row, axis by axis.</summary>
    public void Swings(Span<double> swings)
    {
        int d = unknownCount;
        // Covariance is (L Lᵀ)⁻¹, so that a row's slopes times L⁻ᵀ are its swings.
        for (int i = 0; i < rows.Length; i++)
        {
            Span<double> swing = swings.Slice(i * d, d);
            slopes.AsSpan(i * d, d).CopyTo(swing);
            for (int c = 0; c < d; c++)
            {
                for (int e = 0; e < c; e++)
                {
                    swing[c] -= factor[(c * d) + e] * swing[e];
                }

                swing[c] /= factor[(c * d) + c];
            }
        }
    }

    /// <summary>Residual of a row at the point fitted last, in g.</summary>
    public double ResidualOf(int row) => Pulls[row] / weight[row];

    private void FitTwo(int point, ReadOnlySpan<double> grams)
    {
        double[] lines = table.Slopes;
        double[] starts = table.Intercepts;
        double[] widths = table.Widths;
        double product = 1;
        double a = unknowns.Precisions[0];
        double b = 0;
        double c = unknowns.Precisions[1];
        double e = a * unknowns.Means[0];
        double f = c * unknowns.Means[1];
        for (int i = 0; i < places.Length; i++)
        {
            int at = (point * weighings) + places[i];
            double vessel = slopes[2 * i];
            double slope = slopes[(2 * i) + 1] = lines[at];
            double variance = rows[i].Variance + widths[at];
            double w = weight[i] = 1 / variance;
            product *= variance / rows[i].Variance;
            double shown = (grams[i] - (Intercepts[i] = starts[at])) * w;
            a += vessel * vessel * w;
            b += vessel * slope * w;
            c += slope * slope * w;
            e += vessel * shown;
            f += slope * shown;
        }

        double first = factor[0] = Math.Sqrt(a);
        double cross = factor[2] = b / first;
        double second = factor[3] = Math.Sqrt(c - (cross * cross));
        double amount = Estimates[1] = (f - (cross * e / first)) / (second * second);
        double mass = Estimates[0] = (e - (b * amount)) / a;
        double sum = Square(mass - unknowns.Means[0]) * unknowns.Precisions[0] + (Square(amount - unknowns.Means[1]) * unknowns.Precisions[1]);
        for (int i = 0; i < places.Length; i++)
        {
            double residual = grams[i] - Intercepts[i] - (slopes[2 * i] * mass) - (slopes[(2 * i) + 1] * amount);
            Pulls[i] = residual * weight[i];
            sum += residual * Pulls[i];
        }

        LogEvidence = constant - Math.Log(Math.Sqrt(product) * first * second) - (sum / 2);
    }

    private static double Square(double value) => value * value;

    private void Load(int point)
    {
        int n = weighings;
        int d = unknownCount;
        int m = amounts;
        double[] lines = table.Slopes;
        double[] starts = table.Intercepts;
        double[] widths = table.Widths;
        double product = 1;
        for (int i = 0; i < rows.Length; i++)
        {
            double intercept = 0;
            double width = 0;
            Span<double> slope = slopes.AsSpan((i * d) + d - m, m);
            slope.Clear();
            foreach ((int weighing, double coefficient) in rows[i].Places)
            {
                int at = (point * n) + weighing;
                intercept += coefficient * starts[at];
                width += coefficient * coefficient * widths[at];
                for (int a = 0; a < slope.Length; a++)
                {
                    slope[a] += coefficient * lines[(at * m) + a];
                }
            }

            Intercepts[i] = intercept;
            double variance = rows[i].Variance + width;
            weight[i] = 1 / variance;
            product *= variance / rows[i].Variance;
        }

        logWidths = 0.5 * Math.Log(product);
    }

    private void Assemble(ReadOnlySpan<double> grams)
    {
        int d = unknownCount;
        Array.Clear(factor);
        for (int c = 0; c < d; c++)
        {
            factor[(c * d) + c] = unknowns.Precisions[c];
            Estimates[c] = unknowns.Precisions[c] * unknowns.Means[c];
        }

        for (int i = 0; i < rows.Length; i++)
        {
            double shown = (grams[i] - Intercepts[i]) * weight[i];
            for (int c = 0; c < d; c++)
            {
                double slope = slopes[(i * d) + c];
                Estimates[c] += slope * shown;
                for (int e = 0; e <= c; e++)
                {
                    factor[(c * d) + e] += slope * weight[i] * slopes[(i * d) + e];
                }
            }
        }
    }

    /// <summary>Cholesky in place, lower triangle; returns half the logarithm of the determinant.</summary>
    private double Factorise(int d)
    {
        double product = 1;
        for (int c = 0; c < d; c++)
        {
            for (int e = 0; e <= c; e++)
            {
                double sum = factor[(c * d) + e];
                for (int k = 0; k < e; k++)
                {
                    sum -= factor[(c * d) + k] * factor[(e * d) + k];
                }

                factor[(c * d) + e] = c == e ? Math.Sqrt(sum) : sum / factor[(e * d) + e];
            }

            product *= factor[(c * d) + c];
        }

        return Math.Log(product);
    }

    private void Solve(Span<double> x)
    {
        int d = unknownCount;
        for (int c = 0; c < d; c++)
        {
            for (int e = 0; e < c; e++)
            {
                x[c] -= factor[(c * d) + e] * x[e];
            }

            x[c] /= factor[(c * d) + c];
        }

        for (int c = d - 1; c >= 0; c--)
        {
            for (int e = c + 1; e < d; e++)
            {
                x[c] -= factor[(e * d) + c] * x[e];
            }

            x[c] /= factor[(c * d) + c];
        }
    }
}
