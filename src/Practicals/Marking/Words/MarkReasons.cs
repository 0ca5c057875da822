using Calx.Practicals.Texts;

namespace Calx.Practicals.Marking.Words;

/// <summary>Why an answer is wrong, cannot be read or cannot be marked, and what students choose from.</summary>
internal static class MarkReasons
{
    /// <summary>Marks are not given a language yet; who hands one on begins here.</summary>
    public static MarkReasonTexts Texts { get; } = new(EngineLanguage.British);

    /// <summary>The same of a whole class.</summary>
    public static ClassMarkTexts OfClass { get; } = new(EngineLanguage.British);
}
