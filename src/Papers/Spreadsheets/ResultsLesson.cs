using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Planning;

namespace Calx.Papers.Spreadsheets;

/// <summary>What the sheets of a results workbook share: the weighings, the answers that follow from them, and how each is shown.</summary>
internal sealed class ResultsLesson
{
    private readonly Dictionary<string, string?> formats = new(StringComparer.Ordinal);

    public ResultsLesson(PaperSetting setting)
    {
        Setting = setting;
        Practical practical = setting.Practical;
        Weighings = [.. SheetReadings.Weighings(setting.Plan.Settings)];
        Constants = new ConstantNames(practical.Answers.SelectMany(a => a.Formula.MolarMasses));
        MolarMasses = Constants.Formulas.ToDictionary(f => f, f => Formula.Parse(f).Value!.MolarMass(AtomicWeights.Iupac2024).Value, StringComparer.Ordinal);
        Balance = setting.Plan.Settings.Balances.MinBy(b => b.ResolutionInGrams)!;
        Decimals = [.. setting.Plan.Settings.Balances.Select(b => b.Decimals).Distinct().Order()];
        Answers = Possible();
    }

    /// <summary>The lesson.</summary>
    public PaperSetting Setting { get; }

    /// <summary>The workbook's own texts.</summary>
    public WorkbookTexts Texts => new(Setting.Language);

    /// <summary>The plan.</summary>
    public PlanSettings Plan => Setting.Plan.Settings;

    /// <summary>What a group writes down, in order.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    /// <summary>The answers that these weighings give, in the practical's order.</summary>
    public IReadOnlyList<AnswerDefinition> Answers { get; }

    /// <summary>Names of the molar masses.</summary>
    public ConstantNames Constants { get; }

    /// <summary>Molar masses in g/mol by formula text.</summary>
    public IReadOnlyDictionary<string, double> MolarMasses { get; }

    /// <summary>The balance with the smallest step.</summary>
    public Balance Balance { get; }

    /// <summary>Decimals of the balances, each once, the fewest first.</summary>
    public int[] Decimals { get; }

    /// <summary>Format of a reading's number.</summary>
    public string? FormatOf(Weighing weighing) => ReadingCheck.Format(Setting.Practical.Reading(weighing.Reading).Errors?.Step.Decimals ?? Decimals[0]);

    /// <summary>Format of an answer's number.</summary>
    public string? FormatOf(AnswerDefinition answer) => formats[answer.Id];

    /// <summary>Whether a reading is a mass from a balance.</summary>
    public bool IsMass(Weighing weighing) => Setting.Practical.Reading(weighing.Reading).IsWeighing;

    /// <summary>Places of an answer's formula: where a name's value stands.</summary>
    /// <param name="ofWeighing">The cell of a weighing, by its place in <see cref="Weighings"/>.</param>
    /// <param name="ofAnswer">The cell of an answer, by its place in <see cref="Answers"/>.</param>
    public AnswerFormula Formulas(Func<int, string> ofWeighing, Func<int, string> ofAnswer) => new(
        name =>
        {
            int answer = Answers.ToList().FindIndex(a => a.Id == name);
            return answer >= 0
                ? [ofAnswer(answer)]
                : [.. Weighings.Select((w, i) => (w, i)).Where(p => p.w.Reading == name).Select(p => ofWeighing(p.i))];
        },
        Constants.Of);

    /// <summary>Answers whose readings are all taken, each with a format after the value to expect.</summary>
    private List<AnswerDefinition> Possible()
    {
        HashSet<string> given = [.. Weighings.Select(w => w.Reading)];
        var expected = new Dictionary<string, double>(ExpectedAnswers.ReadingsOf(Setting.Plan), StringComparer.Ordinal);
        List<AnswerDefinition> answers = [.. Setting.Practical.Answers.Where(a => a.Formula.Names.All(given.Contains) && given.Add(a.Id))];
        foreach (AnswerDefinition answer in answers)
        {
            formats[answer.Id] = Expected(answer, expected) is double value && AnswerFigures.Decimals(answer, value, Balance.Decimals, Setting.Practical) is int places
                ? Fixed(places) : null;
        }

        return answers;
    }

    /// <summary>The value to expect, or null where there is none; kept for the answers that need it.</summary>
    private double? Expected(AnswerDefinition answer, Dictionary<string, double> known)
    {
        try
        {
            return answer.Formula.Names.All(known.ContainsKey)
                ? known[answer.Id] = answer.Formula.Evaluate(name => known[name], formula => MolarMasses[formula]) : null;
        }
        catch (UndefinedResultException)
        {
            return null;
        }
    }

    private static string Fixed(int places) => places == 0 ? "0" : $"0.{new string('0', places)}";
}
