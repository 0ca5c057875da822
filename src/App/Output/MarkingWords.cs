using Calx.Practicals.Marking;

namespace Calx.App.Output;

/// <summary>Verdicts by the words that data and tables have for them.</summary>
internal static class MarkingWords
{
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Right => "right",
        Verdict.Carried => "carried",
        Verdict.RoundedEarly => "rounded-early",
        Verdict.Wrong => "wrong",
        Verdict.Missing => "missing",
        Verdict.Unreadable => "unreadable",
        Verdict.CannotMark => "cannot-mark",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
