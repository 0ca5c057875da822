namespace Calx.Practicals.Definition.Source;

/// <summary>A law that a file can name, with the numbers it takes.</summary>
/// <param name="Numbers">Names of its numbers, in order.</param>
/// <param name="Wrong">Why some numbers make no law, or null where they do.</param>
/// <param name="Make">The law.</param>
internal sealed record LawKind(
    IReadOnlyList<string> Numbers, Func<double[], string?> Wrong, Func<double[], ParameterLaw> Make)
{
    /// <summary>Key of the law that is made of other laws.</summary>
    public const string Mixture = "mixture";

    /// <summary>Every law with fixed numbers, by its key.</summary>
    public static IReadOnlyDictionary<string, LawKind> All { get; } = new Dictionary<string, LawKind>
    {
        ["fixed"] = new(["value"], _ => null, n => new ParameterLaw.Fixed(n[0])),
        ["normal"] = new(
            ["mean", "standard deviation"],
            n => n[1] > 0 ? null : "the standard deviation is above 0",
            n => new ParameterLaw.Normal(n[0], n[1])),
        ["rectangular"] = new(
            ["low", "high"], n => Rising(n[0], n[1]), n => new ParameterLaw.Rectangular(n[0], n[1])),
        ["triangular"] = new(
            ["low", "mode", "high"],
            n => Rising(n[0], n[2]) ?? (n[1] >= n[0] && n[1] <= n[2] ? null : "the mode lies from low to high"),
            n => new ParameterLaw.Triangular(n[0], n[1], n[2])),
        ["beta"] = new(
            ["alpha", "beta", "low", "high"],
            n => n[0] > 0 && n[1] > 0 ? Rising(n[2], n[3]) : "alpha and beta are above 0",
            n => new ParameterLaw.Beta(n[0], n[1], n[2], n[3])),
        ["exponential"] = new(
            ["mean"], n => n[0] > 0 ? null : "the mean is above 0", n => new ParameterLaw.Exponential(n[0])),
        ["lognormal"] = new(
            ["median", "sigmaLn"],
            n => n[0] > 0 && n[1] > 0 ? null : "median and sigmaLn are above 0",
            n => new ParameterLaw.Lognormal(n[0], n[1])),
        ["gamma"] = new(
            ["shape", "scale"],
            n => n[0] > 0 && n[1] > 0 ? null : "shape and scale are above 0",
            n => new ParameterLaw.Gamma(n[0], n[1])),
    };

    /// <summary>Every key that names a law.</summary>
    public static IReadOnlyList<string> Keys { get; } = [.. All.Keys, Mixture];

    private static string? Rising(double low, double high) => low < high ? null : "the low end lies below the high end";
}
