using Calx.Papers.Spreadsheets;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.Papers.Marks;

/// <summary>How marks look in a table: each kind has a sign beside the number, so that colour alone tells nothing. The sign belongs to the
/// number's format; the cell holds a number that can be added up.</summary>
internal static class MarkLooks
{
    /// <summary>Wrong.</summary>
    public const string Wrong = "×";

    /// <summary>An earlier mistake rightly used.</summary>
    public const string Carried = "→";

    /// <summary>Rounded early.</summary>
    public const string Rounded = "~";

    /// <summary>Nothing written.</summary>
    public const string Missing = "–";

    /// <summary>A person has to look.</summary>
    public const string Look = "?";

    /// <summary>The teacher's own mark.</summary>
    public const string Own = "*";

    /// <summary>Waits for the teacher.</summary>
    public const string Waiting = "…";

    /// <summary>A mark without a sign.</summary>
    public static CellLook Plain { get; } = Marked(null, null);

    /// <summary>A text in place of a mark.</summary>
    public static CellLook Waits { get; } = new() { IsFramed = true, Stands = Side.Middle, Fill = "FFF8DC" };

    /// <summary>The look of an answer's marks.</summary>
    public static CellLook Of(AnswerMark mark) => mark.Overruled is not null ? Marked(Own, "DDEBF7") : mark.Verdict switch
    {
        Verdict.Wrong => Marked(Wrong, "F8D9D0"),
        Verdict.Carried => Marked(Carried, "FFF2CC"),
        Verdict.RoundedEarly => Marked(Rounded, "FFF2CC"),
        Verdict.Missing => Marked(Missing, null),
        Verdict.Unreadable or Verdict.CannotMark => Marked(Look, "E4E4E4"),
        _ => Plain,
    };

    /// <summary>The look of the marks for an answer in words.</summary>
    public static CellLook Of(ProseMark prose) => prose.Text.Length == 0 && prose.Marks == 0 ? Marked(Missing, null) : Plain;

    /// <summary>A blank as wide as the sign, and one between, where there is none: the numbers stand below each other.</summary>
    private static CellLook Marked(string? sign, string? fill) =>
        new() { IsFramed = true, Stands = Side.Right, Fill = fill, Format = sign is null ? $"0_ _{Wrong}" : $"0\" {sign}\"" };
}
