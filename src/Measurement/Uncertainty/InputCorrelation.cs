namespace Calx.Measurement.Uncertainty;

/// <summary>The correlation of two inputs of a measurement model.</summary>
public sealed class InputCorrelation
{
    /// <summary>States one coefficient.</summary>
    /// <param name="a">Name of one input.</param>
    /// <param name="b">Name of the other.</param>
    /// <param name="r">Correlation coefficient (JCGM 100:2008, 5.2.2), -1 to 1.</param>
    /// <exception cref="ArgumentException">A name is empty, both are the same, or r lies outside -1 to 1.</exception>
    public InputCorrelation(string a, string b, double r)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(a);
        ArgumentException.ThrowIfNullOrWhiteSpace(b);
        if (a == b)
        {
            throw new ArgumentException($"The correlation of {a} with itself is 1 and is not stated.", nameof(b));
        }

        if (!(Math.Abs(r) <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(r), r, "A correlation coefficient lies between -1 and 1.");
        }

        A = a;
        B = b;
        R = r;
    }

    /// <summary>Name of one input.</summary>
    public string A { get; }

    /// <summary>Name of the other input.</summary>
    public string B { get; }

    /// <summary>Correlation coefficient, -1 to 1.</summary>
    public double R { get; }
}
