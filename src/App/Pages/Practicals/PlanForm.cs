using System.Globalization;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.Practicals.Definition;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;

namespace Calx.App.Pages.Practicals;

/// <summary>
/// The form of a plan, filled in: its words, the lesson that they make, and what is wrong with which field. It comes with an address,
/// so that a plan can be kept as a bookmark.
/// </summary>
public sealed class PlanForm
{
    public const double UsualMinutes = 60;
    public const int MostBalances = 20;

    private readonly PlanFields fields;

    private PlanForm(Practical practical, PlanFields fields, PlanNumbers numbers)
    {
        Practical = practical;
        this.fields = fields;
        Numbers = numbers;
        PlanWords words = ReadWords();
        Words = words with { Learned = numbers.Of(words.Numbers) };
        var check = new PlanCheck(practical, Words);
        PlanChoice? choice = check.Choice();
        foreach (string fault in check.Faults)
        {
            Note(fault);
        }

        if (choice?.TooMuch is string tooMuch)
        {
            fields.Fault(UsualGroups.TooMany(practical, Words.Groups) is null ? "mass" : "groups", tooMuch + ".");
        }

        Choice = fields.Faults.Count == 0 ? choice : null;
    }

    /// <summary>The practical.</summary>
    public Practical Practical { get; }

    /// <summary>The learned numbers that it may take.</summary>
    public PlanNumbers Numbers { get; }

    /// <summary>What was said, with the usual where nothing or nothing usable was said.</summary>
    public PlanWords Words { get; }

    /// <summary>The lesson, or null where something is wrong.</summary>
    public PlanChoice? Choice { get; }

    /// <summary>What is wrong, by field; faults of no single field under the empty name.</summary>
    public IReadOnlyDictionary<string, List<string>> Faults => fields.Faults;

    /// <summary>A field as it was typed.</summary>
    public string Typed(string name) => fields.Text(name);

    /// <summary>Reads a form.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="query">The fields.</param>
    /// <param name="numbers">The learned numbers that it may take; null for none.</param>
    public static PlanForm Of(Practical practical, IEnumerable<KeyValuePair<string, StringValues>> query, PlanNumbers? numbers = null) =>
        new(practical, new PlanFields(new Dictionary<string, StringValues>(query, StringComparer.Ordinal)), numbers ?? PlanNumbers.None);

    /// <summary>Reads a form from the text of a query.</summary>
    public static PlanForm Of(Practical practical, string query, PlanNumbers? numbers = null) => Of(practical, QueryHelpers.ParseQuery(query), numbers);

    private PlanWords ReadWords() => new()
    {
        Groups = fields.Whole("groups", 1, PlanSettings.MostGroups) ?? UsualGroups.Of(Practical),
        Students = fields.Whole("students", 1, 1000),
        Balances = fields.Whole("balances", 1, MostBalances),
        Resolutions = Resolutions(),
        Repeatability = fields.Number("repeatability", 0, 1, "a mass in g"),
        Minutes = fields.Number("minutes", 1, PlanSettings.LongestLesson, "a number of minutes") ?? UsualMinutes,
        Mass = fields.Number("mass", 0.0001, 1000, "a mass in g"),
        Trials = fields.Whole("trials", 1, PlanSettings.MostTrials) ?? 1,
        Heatings = fields.Whole("heatings", 1, PlanSettings.MostHeatings(Practical)),
        NoEmpty = fields.IsTicked("noempty"),
        Prepared = fields.IsTicked("prepared"),
        Stagger = fields.Number("stagger", 0, PlanSettings.LongestLesson, "a number of minutes") ?? 0,
        Wanted = [.. fields.All("want").Distinct()],
        Conditions = [.. fields.All("condition").Distinct()],
        Without = [.. fields.All("without").Distinct()],
        Moved = [.. fields.All("move").Distinct()],
        Alongside = [.. fields.All("alongside").Distinct()],
        Times = [.. Practical.Steps.Select(s => Time(s.Id)).OfType<string>()],
        Kit = Counted("kit", item => fields.Whole(item, 1, 1000)),
        Prices = Counted("price", item => fields.Number(item, 0, 1e6, "a price")),
        Metre = fields.Number("metre", 0.01, 20, "a mass in g"),
        Numbers = fields.Text("numbers") is { Length: > 0 } numbers ? numbers : null,
    };

    private string[] Resolutions()
    {
        string text = fields.Text("resolution");
        if (!text.Contains(',', StringComparison.Ordinal))
        {
            return text.Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries);
        }

        fields.Fault("resolution", "Write a full stop, not a comma, and a space between the balances, such as 0.01 0.001.");
        return [];
    }

    /// <summary>A step's own times in the words of the command line, or null.</summary>
    private string? Time(string step)
    {
        string name = $"time.{step}", text = fields.Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        IReadOnlyList<double>? numbers = fields.Numbers(name);
        bool grows = numbers is { Count: >= 1 and <= 3 } && numbers.Zip(numbers.Skip(1)).All(p => p.First <= p.Second);
        if (grows && numbers![0] >= 0 && numbers[^1] is > 0 and <= PlanSettings.LongestLesson)
        {
            return $"{step}={string.Join(',', numbers.Select(n => n.ToString("R", CultureInfo.InvariantCulture)))}";
        }

        fields.Fault(
            name, $"'{text}' is not taken: the least, likely and most minutes are expected with spaces between, such as 8 10 15; or least and most; or one number{PlanFields.Comma(text)}.");
        return null;
    }

    private string[] Counted<T>(string kind, Func<string, T?> number)
        where T : struct, IFormattable =>
    [
        .. Practical.Kit.Select(k => (k.Id, Number: number($"{kind}.{k.Id}")))
            .Where(k => k.Number is not null).Select(k => $"{k.Id}={k.Number!.Value.ToString(null, CultureInfo.InvariantCulture)}"),
    ];

    /// <summary>Puts a fault in the words of the command line beside its field.</summary>
    private void Note(string fault)
    {
        string[] parts = fault.Split(": ", 2);
        bool named = parts.Length == 2 && parts[0].StartsWith("--", StringComparison.Ordinal);
        string sentence = named ? parts[1] : fault;
        string name = named ? parts[0][2..].Replace("-", "", StringComparison.Ordinal) : "";
        fields.Fault(name, char.ToUpperInvariant(sentence[0]) + sentence[1..] + ".");
    }
}
