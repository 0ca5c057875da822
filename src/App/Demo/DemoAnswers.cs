using System.Globalization;
using Calx.App.Live;
using Calx.Practicals.Model.Simulation;
using Calx.Records.Journal;

namespace Calx.App.Demo;

/// <summary>What the students of the demo's earlier lesson answered, each from the own group's readings, with the mistakes that a class makes. All of it is invented.</summary>
/// <param name="drawn">The class's readings.</param>
/// <param name="id">The id of an entry by its name.</param>
public sealed class DemoAnswers(SimulatedClass drawn, Func<string, EntryId> id)
{
    /// <summary>What the class was asked.</summary>
    public static IReadOnlyList<string> Asked { get; } = ["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio", "formula", "what-happened", "too-little"];

    private const double Mg = 24.3, O = 16.0;

    /// <summary>Minutes after the lesson began: at home that evening.</summary>
    private const double Evening = 420;

    private static readonly string[] Mistakes =
    [
        "", "molecule", "", "inverted", "", "", "atomic-number", "", "molecule", "multiplied", "", "stops", "", "molecule", "", "rounded", "vessel", "", "inverted", "", "forced", "", "", "stops",
    ];

    private static readonly string[] Said =
    [
        "The mass rose by {0} g because magnesium joined with oxygen of the air, which was not on the pan before.",
        "The weight went up by {0} g as oxygen was added.",
        "It gained {0} g. The magnesium swelled when it got hot so it is heavier.",
        "The mass rose by {0} g; oxygen atoms from the air are now in the crucible too.",
    ];

    private static readonly string[] Causes =
    [
        "Smoke escaped when the lid was up, so the mass after heating was too small.",
        "Human error.",
        "Not all of the magnesium had burnt, so the last reading was too low and the oxygen too little.",
        "The balance was not reliable.",
    ];

    /// <summary>Every answer of the members who sit two at each group.</summary>
    /// <param name="members">How many there are.</param>
    public IEnumerable<DemoEntry> Entries(int members)
    {
        for (int member = 1; member <= members; member++)
        {
            int order = 0;
            foreach ((string answer, string text, string? unit) in Of(member))
            {
                yield return new DemoEntry(
                    Evening + member + (0.1 * order++), new JournalCell(0, 1, Acts.AnswerPrefix + answer, member), new EntryContent.Answer(text, unit), id($"answer {member} {answer}"), $"student-{member}");
            }
        }
    }

    private IEnumerable<(string Answer, string Text, string? Unit)> Of(int member)
    {
        IReadOnlyList<SimulatedReading> readings = drawn.Groups[(member - 1) / 2].Readings;
        decimal Last(string reading) => readings.Where(r => r.Weighing.Reading == reading).MaxBy(r => r.Weighing.Occurrence)!.Written.Value;
        string mistake = Mistakes[(member - 1) % Mistakes.Length];
        double mg = (double)(Last("before") - Last("empty")), o = (double)(Last("after") - Last("before"));
        yield return ("massMagnesium", Fixed(mg), "g");
        yield return ("massOxygen", Fixed(o), "g");
        if (mistake == "stops")
        {
            yield break;
        }

        string first = Figures(mistake switch { "atomic-number" => mg / 12, "multiplied" => mg * Mg, "vessel" => (double)Last("before") / Mg, "rounded" => Math.Round(mg / Mg, 2), _ => mg / Mg });
        string second = Figures(mistake switch { "molecule" => o / 32, "atomic-number" => o / 8, "multiplied" => o * O, "rounded" => Math.Round(o / O, 2), _ => o / O });
        yield return ("molesMagnesium", first, "mol");
        yield return ("molesOxygen", second, "mol");
        double ratio = double.Parse(first, CultureInfo.InvariantCulture) / double.Parse(second, CultureInfo.InvariantCulture);
        yield return ("ratio", mistake == "forced" ? "1.00" : Figures(mistake == "inverted" ? 1 / ratio : ratio), null);
        yield return ("formula", ratio is > 1.5 and < 3 ? "Mg2O" : "MgO", null);
        yield return ("what-happened", string.Format(CultureInfo.InvariantCulture, Said[member % Said.Length], Fixed(o)), null);
        yield return ("too-little", Causes[(member / 2) % Causes.Length], null);
    }

    private static string Fixed(double value) => value.ToString("F2", CultureInfo.InvariantCulture);

    private static string Figures(double value)
    {
        const int Kept = 3;
        int decimals = value == 0 || !double.IsFinite(value) ? Kept : Math.Clamp(Kept - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 8);
        return value.ToString(string.Create(CultureInfo.InvariantCulture, $"F{decimals}"), CultureInfo.InvariantCulture);
    }
}
