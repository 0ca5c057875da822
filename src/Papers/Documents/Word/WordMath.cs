using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Wordprocessing;
using M = DocumentFormat.OpenXml.Math;

namespace Calx.Papers.Documents.Word;

/// <summary>Equations that a word processor can edit (Office Math, ECMA-376 part 1, 22.1).</summary>
internal static class WordMath
{
    /// <summary>An equation on a line of its own, from the left margin.</summary>
    public static Paragraph Paragraph(MathPart equation) => new(
        new ParagraphProperties(new ParagraphStyleId { Val = WordStyles.Equation }),
        new M.Paragraph(
            new M.ParagraphProperties(new M.Justification { Val = M.JustificationValues.Left }),
            new M.OfficeMath(Of(equation))));

    private static IEnumerable<OpenXmlElement> Of(MathPart part) => part switch
    {
        MathPart.Words words => [Words(words.Text)],
        MathPart.Row row => row.Parts.SelectMany(Of),
        MathPart.Fraction fraction => [new M.Fraction(new M.Numerator(Of(fraction.Above)), new M.Denominator(Of(fraction.Below)))],
        MathPart.Bracketed bracketed => [new M.Delimiter(new M.Base(Of(bracketed.Content)))],
        // A framed box is not drawn by every word processor; square brackets are.
        MathPart.Blank => [new M.Delimiter(
            new M.DelimiterProperties(new M.BeginChar { Val = "[" }, new M.EndChar { Val = "]" }), new M.Base(Words("\u2003\u2003\u2003\u2003")))],
        _ => throw new ArgumentException($"{part.GetType().Name} is no part of an equation.", nameof(part)),
    };

    /// <summary>Words stand upright: they are no variables.</summary>
    private static M.Run Words(string text) => new(
        new M.RunProperties(new M.NormalText()),
        new M.Text(text) { Space = SpaceProcessingModeValues.Preserve });
}
