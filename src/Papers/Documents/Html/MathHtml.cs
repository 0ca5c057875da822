using Calx.Papers.Reports;

namespace Calx.Papers.Documents.Html;

/// <summary>An equation in MathML Core.</summary>
internal static class MathHtml
{
    public static string Of(MathPart part) => part switch
    {
        // Spaces at the ends of a text are not drawn, so they are hard ones.
        MathPart.Words words => $"<mtext>{Text.Of(words.Text.Replace(' ', '\u00a0'))}</mtext>",
        MathPart.Row row => $"<mrow>{string.Concat(row.Parts.Select(Of))}</mrow>",
        MathPart.Fraction fraction => $"<mfrac>{Of(fraction.Above)}{Of(fraction.Below)}</mfrac>",
        MathPart.Bracketed bracketed => $"<mrow><mo>(</mo>{Of(bracketed.Content)}<mo>)</mo></mrow>",
        MathPart.Blank => "<mtext class=\"blank\">\u2003\u2003\u2003\u2003</mtext>",
        _ => throw new ArgumentException($"{part.GetType().Name} is no part of an equation.", nameof(part)),
    };
}
