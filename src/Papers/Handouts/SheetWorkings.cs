using Calx.Papers.Reports;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts;

/// <summary>What students work out from their readings, with as much help as their sheet gives.</summary>
/// <param name="practical">The practical.</param>
/// <param name="weights">Atomic weights for the molar masses that are given.</param>
/// <param name="language">The language of the sheet's own texts.</param>
internal sealed class SheetWorkings(Practical practical, AtomicWeights weights, PaperLanguage language)
{
    private const double SpaceInMillimetres = 32;

    /// <summary>Characters that stand side by side on a line of a sheet, in the widest letters that a word processor may take
    /// for an equation; it is not broken by itself.</summary>
    private const int LongestEquation = 80;

    /// <summary>Characters of a working that fit into half a line, on two lines of text.</summary>
    private const int LongestInHalf = 100;

    /// <summary>Characters of an equation that fit into half a line.</summary>
    private const int LongestEquationInHalf = 44;

    private readonly StudentSheetTexts texts = new(language);

    /// <summary>The workings.</summary>
    /// <param name="level">How much they help.</param>
    /// <param name="sideBySide">Whether two short ones may stand side by side: where letters are large, none does.</param>
    public IReadOnlyList<PaperBlock> Of(SupportLevel level, bool sideBySide) => level switch
    {
        SupportLevel.Guided => [.. MolarMasses(), .. InPairs([.. practical.Answers.Select(a => (IReadOnlyList<PaperBlock>)[.. Guided(a)])], sideBySide)],
        SupportLevel.Standard => [.. MolarMasses(), Named(), new PaperBlock.WorkingSpace(SpaceInMillimetres)],
        _ => [Asked(), new PaperBlock.WorkingSpace(2 * SpaceInMillimetres)],
    };

    /// <summary>Two that follow each other stand side by side where both are short, so that a sheet keeps to its two sides.</summary>
    private static IEnumerable<PaperBlock> InPairs(IReadOnlyList<PaperBlock>[] workings, bool sideBySide)
    {
        for (int i = 0; i < workings.Length; i++)
        {
            if (sideBySide && i + 1 < workings.Length && FitsInHalf(workings[i]) && FitsInHalf(workings[i + 1]))
            {
                yield return new PaperBlock.Beside(workings[i], workings[i + 1], leftShare: 0.5);
                i++;
                continue;
            }

            foreach (PaperBlock block in workings[i])
            {
                yield return block;
            }
        }
    }

    private static bool FitsInHalf(IReadOnlyList<PaperBlock> working) => working.All(block => block switch
    {
        PaperBlock.Equation equation => Width(equation.Content) <= LongestEquationInHalf,
        PaperBlock.Paragraph paragraph => paragraph.Text.Text.Length <= LongestInHalf,
        _ => false,
    });

    /// <summary>An equation in words, and the same with frames for the numbers.</summary>
    private IEnumerable<PaperBlock> Guided(AnswerDefinition answer)
    {
        if (answer.Formula is NameTerm name && practical.Series?.Quantities.Any(q => q.Id == name.Name) == true)
        {
            // Read off and written down: there is nothing to reckon.
            yield return new PaperBlock.Equation(new MathPart.Row([new MathPart.Words($"{answer.Label} = "), new MathPart.Blank(), new MathPart.Words($" {answer.Unit}")]));
            yield break;
        }

        MathPart words = new ExpressionMath(Name).Of(answer.Formula);
        MathPart blanks = new ExpressionMath(_ => new MathPart.Blank()).Of(answer.Formula);
        MathPart[] own = [new MathPart.Words(" = "), blanks, new MathPart.Words(" = "), new MathPart.Blank(), new MathPart.Words(answer.Unit == "1" ? "" : $" {answer.Unit}")];
        if (answer.Formula.Nodes.Any(n => n is BinaryOperation { Operator: Operator.Divide }))
        {
            var label = new MathPart.Words($"{answer.Label} = ");
            if (Width(label) + Width(words) + own.Sum(Width) <= LongestEquation)
            {
                yield return new PaperBlock.Equation(new MathPart.Row([label, words, .. own]));
                yield break;
            }

            if (Width(words) + own.Sum(Width) <= LongestEquation)
            {
                yield return new PaperBlock.Paragraph($"{answer.Label} =");
                yield return new PaperBlock.Equation(new MathPart.Row([words, .. own]));
                yield break;
            }

            if (Width(label) + Width(words) <= LongestEquation)
            {
                yield return new PaperBlock.Equation(new MathPart.Row([label, words]));
            }
            else
            {
                yield return new PaperBlock.Paragraph($"{answer.Label} =");
                yield return new PaperBlock.Equation(words);
            }

            yield return new PaperBlock.Equation(new MathPart.Row(own));
            yield break;
        }

        // Without a fraction the words can be a line of text, which is broken where it is too long.
        yield return new PaperBlock.Paragraph($"{answer.Label} = {TextOf(words)}");
        yield return new PaperBlock.Equation(new MathPart.Row(own));
    }

    /// <summary>How many characters stand side by side; a frame takes as much as eight.</summary>
    private static int Width(MathPart part) => part switch
    {
        MathPart.Fraction fraction => Math.Max(Width(fraction.Above), Width(fraction.Below)),
        MathPart.Words words => words.Text.Length,
        MathPart.Row row => row.Parts.Sum(Width),
        MathPart.Bracketed bracketed => 2 + Width(bracketed.Content),
        _ => 8,
    };

    /// <summary>How an answer follows, on one line.</summary>
    public static string InWords(Practical practical, AnswerDefinition answer, PaperLanguage language) =>
        TextOf(new ExpressionMath(new SheetWorkings(practical, AtomicWeights.Iupac2024, language).Name).Of(answer.Formula));

    private static string TextOf(MathPart part) => part switch
    {
        MathPart.Fraction fraction => $"{Grouped(fraction.Above)} ÷ {Grouped(fraction.Below)}",
        MathPart.Words words => words.Text,
        MathPart.Row row => string.Concat(row.Parts.Select(TextOf)),
        MathPart.Bracketed bracketed => $"({TextOf(bracketed.Content)})",
        _ => throw new ArgumentException($"{part.GetType().Name} is no line of text.", nameof(part)),
    };

    private static string Grouped(MathPart part) => part is MathPart.Row { Parts.Count: > 1 } or MathPart.Fraction ? $"({TextOf(part)})" : TextOf(part);

    private PaperBlock.Items Named() => new(
        ListKind.Numbers, [.. practical.Answers.Select(a => Phrase.Of(Sentences.Heading(Text.Capital(a.Label), a.Unit)))], columns: 2);

    /// <summary>Only where it leads: the last of what is worked out.</summary>
    private PaperBlock.Paragraph Asked() => new(
        texts.WorkOut(Sentences.And([.. Ends().Select(a => a.Label)], language)));

    /// <summary>Answers that no other answer is worked out from.</summary>
    private IEnumerable<AnswerDefinition> Ends() => practical.Answers.Where(a => !practical.Answers.Any(b => b.Formula.Names.Contains(a.Id)));

    /// <summary>None where no answer needs one.</summary>
    private IEnumerable<PaperBlock> MolarMasses()
    {
        string[] formulas = [.. practical.Answers.SelectMany(a => a.Formula.MolarMasses).Distinct()];
        return formulas.Length == 0 ? [] : [new PaperBlock.Paragraph(texts.MolarMasses(string.Join("; ", formulas.Select(f => $"{Written(f)} {Mass(f)}"))), ParagraphLook.Given)];
    }

    private string Mass(string formula) => Formula.Parse(formula) is { Value: Formula read }
        ? read.MolarMass(weights).Value.ToString("0.0", CultureInfo.InvariantCulture) : "?";

    private static string Written(string formula) => Formula.Parse(formula) is { Value: Formula read } ? read.ToUnicode() : formula;

    private MathPart.Words Name(Expression part) => new(part switch
    {
        MolarMassTerm molar => texts.MolarMassOf(Written(molar.Formula)),
        NameTerm name when practical.Answers.FirstOrDefault(a => a.Id == name.Name) is AnswerDefinition answer => answer.Label,
        NameTerm name when practical.Series?.Quantities.FirstOrDefault(q => q.Id == name.Name) is CurveQuantityDefinition read => texts.ReadOffCurve(read.Label),
        NameTerm name => LowerCase(ReadingNames.OfId(practical, name.Name)),
        _ => "?",
    });

    private static string LowerCase(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
