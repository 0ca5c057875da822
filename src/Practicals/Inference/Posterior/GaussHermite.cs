namespace Calx.Practicals.Inference.Posterior;

/// <summary>Gauss-Hermite nodes and weights for the mean of a function of a standard normal variable (the roots of the
/// Hermite polynomials He; M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, table 25.10, scaled).</summary>
internal static class GaussHermite
{
    /// <summary>Exact to the fifth power.</summary>
    public static (double Node, double Weight)[] Three { get; } = Mirrored([(1.7320508075688774, 1.0 / 6)], 2.0 / 3);

    /// <summary>Exact to the ninth power.</summary>
    public static (double Node, double Weight)[] Five { get; } =
        Mirrored([(1.355626179974266, 0.22207592200561263), (2.8569700138728056, 0.011257411327720688)], 8.0 / 15);

    /// <summary>Exact to the seventeenth power.</summary>
    public static (double Node, double Weight)[] Nine { get; } = Mirrored(
        [
            (1.0232556637891326, 0.24409750289493953),
            (2.07684797867783, 0.04991640676521782),
            (3.20542900285647, 0.0027891413212317692),
            (4.512745863399783, 2.2345844007746607e-05),
        ],
        128.0 / 315);

    private static (double Node, double Weight)[] Mirrored((double Node, double Weight)[] right, double middle) =>
        [.. right.Select(n => (-n.Node, n.Weight)), (0, middle), .. right];
}
