using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Drafting;

/// <summary>The answers to a draft's questions, understood.</summary>
internal sealed partial record DraftPlan
{
    public required DraftFamily Family { get; init; }

    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Question { get; init; }

    public required DraftEquation Equation { get; init; }

    public required string Vessel { get; init; }

    public required double VesselMass { get; init; }

    public required bool WeighsEmpty { get; init; }

    public required int Repeats { get; init; }

    public required double Usual { get; init; }

    public required double Largest { get; init; }

    public required double Solution { get; init; }

    /// <summary>Share of each other reactant in its solution, by the id of its material.</summary>
    public required IReadOnlyDictionary<string, double> Shares { get; init; }

    public required string SetUp { get; init; }

    public required string Act { get; init; }

    public required string Wait { get; init; }

    public required string WorkOut { get; init; }

    public required bool Flame { get; init; }

    public required bool Flammable { get; init; }

    /// <summary>Share of the sample in its own solution: 1 where it is weighed out as a solid.</summary>
    public double Strength => Family == DraftFamily.Closed ? SampleInSolution : 1;

    /// <summary>Share of the first solution that is the sample, where both are solutions (judgement).</summary>
    private const double SampleInSolution = 0.1;

    /// <summary>Most of a solution that may be dissolved substance: more would hardly dissolve.</summary>
    private const double MostDissolved = 0.6;

    /// <summary>Understands the answers; null where there are faults, which are noted.</summary>
    public static DraftPlan? Of(DraftFamily family, DraftWords words)
    {
        DraftEquation? equation = DraftEquation.Read(family, words);
        if (equation is not null)
        {
            DraftTitle.Offer(family, equation, words);
        }

        string title = words.Text("title");
        double usual = words.Number("usual", 0.01, 500);
        double solution = family == DraftFamily.Heated ? 0 : words.Number("solution", 0.1, 2000);
        double excess = family == DraftFamily.Heated ? 0 : words.Number("excess", 1, 100);
        DraftPlan? plan = equation is null ? null : new DraftPlan
        {
            Family = family,
            Id = IdOf(words, title),
            Title = title,
            Question = words.Text("question"),
            Equation = equation,
            Vessel = words.Text("vessel"),
            VesselMass = words.Number("vesselMass", 0.1, 5000),
            WeighsEmpty = words.Yes("empty"),
            Repeats = words.Whole("repeats", 1, 9),
            Usual = usual,
            Largest = words.Typed("largest").Length == 0 ? Math.Round(1.2 * usual, 4) : words.Number("largest", usual, 1000),
            Solution = solution,
            Shares = SharesOf(family, equation, usual, solution, excess, words),
            SetUp = words.Minutes("setUp"),
            Act = words.Minutes("act"),
            Wait = words.Minutes("wait"),
            WorkOut = words.Minutes("workOut"),
            Flame = words.Yes("flame"),
            Flammable = family != DraftFamily.Heated && words.Yes("flammable"),
        };
        CheckFits(family, equation, words);
        return words.Faults.Count == 0 ? plan : null;
    }

    private static void CheckFits(DraftFamily family, DraftEquation? equation, DraftWords words)
    {
        if (equation is null)
        {
            return;
        }

        if (family == DraftFamily.Gas && !equation.Products.Any(p => p.IsGas))
        {
            words.Fault("equation", "no gas is made; write (g) behind the formula of what leaves, or answer the first question otherwise");
        }
        else if (family == DraftFamily.Product && equation.Product is null)
        {
            words.Fault("equation", "everything that is made is a gas, so nothing can be collected");
        }
        else if (family == DraftFamily.Heated && equation.Product is null)
        {
            words.Fault("equation", "everything that is made is a gas, so nothing is left to weigh");
        }
        else if (family == DraftFamily.Heated && equation.Others.Any(o => !o.IsGas))
        {
            words.Fault("equation", $"{equation.Others.First(o => !o.IsGas).Text} does not come from the air; a solid is heated by itself here. Write (g) behind the formula if it is a gas");
        }
        else if (family != DraftFamily.Heated && equation.Others.Count == 0)
        {
            words.Fault("equation", "there is nothing to mix the sample with");
        }
    }

    private static Dictionary<string, double> SharesOf(
        DraftFamily family, DraftEquation? equation, double usual, double solution, double excess, DraftWords words)
    {
        var shares = new Dictionary<string, double>(StringComparer.Ordinal);
        if (equation is null || solution <= 0)
        {
            return shares;
        }

        double strength = family == DraftFamily.Closed ? SampleInSolution : 1;
        double turns = usual * strength / (equation.Sample.Coefficient * DraftEquation.MassOf(equation.Sample));
        foreach (DraftSpecies other in equation.Others)
        {
            shares[other.Material] = UpToTwoFigures(excess * turns * other.Coefficient * DraftEquation.MassOf(other) / solution);
        }

        if (shares.Values.Sum() > MostDissolved)
        {
            words.Fault("solution", $"so much cannot be dissolved in it; take at least {DraftWords.Plain(Math.Ceiling(solution * shares.Values.Sum() / MostDissolved))} g");
        }

        return shares;
    }

    /// <summary>Rounded up: a strength rounded down would leave some of the sample over.</summary>
    private static double UpToTwoFigures(double share)
    {
        if (!(share > 0))
        {
            return share;
        }

        decimal step = (decimal)Math.Pow(10, Math.Floor(Math.Log10(share)) - 1);
        return (double)(Math.Ceiling(((decimal)share / step) - 1e-9m) * step);
    }

    /// <summary>As answered, or made of the title: small letters, digits and dashes.</summary>
    private static string IdOf(DraftWords words, string title)
    {
        string typed = words.Typed("id");
        if (typed.Length > 0)
        {
            if (!Id_().IsMatch(typed) || typed is "new")
            {
                words.Fault("id", $"'{typed}' cannot be a short name; small letters, digits and dashes are expected, such as zinc-carbonate");
            }
            else if (BuiltInPracticals.Find(typed) is not null)
            {
                words.Fault("id", $"the program brings along a practical '{typed}'; another name is expected");
            }

            return typed;
        }

        string plain = new([.. title.Normalize(NormalizationForm.FormD).ToLowerInvariant()
            .Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark).Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')]);
        string id = string.Join('-', plain.Split('-', StringSplitOptions.RemoveEmptyEntries));
        id = id.Length == 0 || !char.IsLetter(id[0]) || id == "new" ? $"practical-{id}".TrimEnd('-') : id;
        id = id.Length > 50 ? id[..50].TrimEnd('-') : id;
        return BuiltInPracticals.Find(id) is null ? id : $"my-{id}";
    }

    [GeneratedRegex(@"^[a-z][a-z0-9-]{0,49}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Id_();
}
