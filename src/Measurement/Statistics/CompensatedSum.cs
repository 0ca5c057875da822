namespace Calx.Measurement.Statistics;

/// <summary>
/// A running sum kept as an unevaluated pair of doubles (about 32 significant digits), after Dekker (1971) and
/// Knuth's error-free addition. Readings of a balance differ in their last digits only, and a plain sum loses
/// exactly those. <c>default</c> is an empty sum.
/// </summary>
internal struct CompensatedSum
{
    private double high;
    private double low;

    /// <summary>The sum rounded to a double.</summary>
    public readonly double Value => high + low;

    /// <summary>What <see cref="Value"/> misses of the sum.</summary>
    public readonly double Remainder => high - Value + low;

    /// <summary>Adds a number.</summary>
    public void Add(double term)
    {
        double sum = high + term;
        double part = sum - high;
        double error = high - (sum - part) + (term - part);
        Renormalise(sum, low + error);
    }

    /// <summary>Adds a product without rounding it first.</summary>
    public void AddProduct(double left, double right)
    {
        double product = left * right;
        Add(product);
        Add(Math.FusedMultiplyAdd(left, right, -product));
    }

    private void Renormalise(double sum, double error)
    {
        high = sum + error;
        low = sum - high + error;
    }
}
