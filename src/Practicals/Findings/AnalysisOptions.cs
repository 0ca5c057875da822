using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What is asked of an analysis.</summary>
/// <param name="Causes">Whether causes, decisions and next steps are worked out.</param>
/// <param name="Conditions">Ids of the practical's conditions that hold for the class.</param>
public sealed record AnalysisOptions(bool Causes, IReadOnlyList<string> Conditions)
{
    /// <summary>The language of every sentence that the findings have.</summary>
    public EngineLanguage Language { get; init; } = EngineLanguage.British;

    /// <summary>Whether curves are laid through mass against time; they take longest, and the key quantity does without them.</summary>
    public bool Curves { get; init; } = true;

    /// <summary>Causes, and an ordinary class.</summary>
    public static AnalysisOptions Usual { get; } = new(Causes: true, []);
}
