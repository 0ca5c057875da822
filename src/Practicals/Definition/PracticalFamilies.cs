namespace Calx.Practicals.Definition;

/// <summary>Which family a practical is of. It follows from what the file says of readings, reactions and the change that is expected; only an
/// analysis cannot be told from them, and any file may say its own (key <c>family</c>).</summary>
public static class PracticalFamilies
{
    /// <summary>The words for them in files and on the command line.</summary>
    public static IReadOnlyDictionary<string, PracticalFamily> Words { get; } = new Dictionary<string, PracticalFamily>(StringComparer.Ordinal)
    {
        ["gains"] = PracticalFamily.Gains,
        ["loses"] = PracticalFamily.Loses,
        ["gas-leaves"] = PracticalFamily.GasLeaves,
        ["same"] = PracticalFamily.Same,
        ["over-time"] = PracticalFamily.OverTime,
        ["product"] = PracticalFamily.Product,
        ["analysed"] = PracticalFamily.Analysed,
        ["other-readings"] = PracticalFamily.OtherReadings,
    };

    /// <summary>The word for one.</summary>
    public static string WordOf(PracticalFamily family) => Words.First(w => w.Value == family).Key;

    /// <summary>The family that follows where a file says none.</summary>
    public static PracticalFamily Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        bool falls = practical.Findings.Expect == ExpectedChange.Falls;
        return practical.Series is not null ? PracticalFamily.OverTime
            : practical.Findings.Expect == ExpectedChange.Same ? PracticalFamily.Same
            : practical.Readings.Any(r => r.Gauge is not null) ? PracticalFamily.OtherReadings
            : practical.WeighsProduct ? PracticalFamily.Product
            : !IsMixed(practical) ? falls ? PracticalFamily.Loses : PracticalFamily.Gains
            : falls && MakesGas(practical) ? PracticalFamily.GasLeaves
            : PracticalFamily.Product;
    }

    /// <summary>Whether two things that are weighed or poured react; what comes from the air or a flame is there by itself.</summary>
    private static bool IsMixed(Practical practical) =>
        practical.Reactions.Any(r => r.Reactants.Count(t => !IsAir(practical, t)) > 1);

    /// <summary>Whether the reaction that the practical is about, its first, gives off a gas.</summary>
    private static bool MakesGas(Practical practical) => practical.Reactions[0].Products.Any(t => IsAir(practical, t));

    private static bool IsAir(Practical practical, ReactionTerm term) => practical.Materials.Any(m => m.Id == term.Material && m.Air);
}
