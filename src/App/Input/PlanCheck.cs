using System.Globalization;
using Calx.App.Learning;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Practicals.Planning;

namespace Calx.App.Input;

/// <summary>Holds what was said of a lesson against the practical, noting every fault.</summary>
public sealed class PlanCheck(Practical practical, PlanWords words)
{
    private const int UsualBalances = 2;
    private const double UsualStep = 0.01;

    /// <summary>In g; no balance that steps more coarsely weighs what a school heats.</summary>
    private const double CoarsestStep = 1;

    private const int MostOfAGroup = 10;

    /// <summary>One group is a demonstration: the whole class looks on.</summary>
    private const int MostLookOn = 60;

    private readonly List<string> faults = [];

    /// <summary>What is wrong, a line each.</summary>
    public IReadOnlyList<string> Faults => faults;

    /// <summary>The lesson; of no use where there are faults.</summary>
    public PlanChoice? Choice()
    {
        Balance[] balances = Balances();
        IReadOnlyDictionary<string, double> prices = Numbers("--price", words.Prices, practical.Kit.Select(k => k.Id), "a price such as 2.40", x => x >= 0);
        string[] decidable = [.. practical.Conclusions.Where(c => c.Test is not null).Select(c => c.Id)];
        CheckWords("--want", "conclusion", words.Wanted, decidable);
        faults.AddRange(ConditionChoice.Faults(practical, words.Conditions));
        CheckWords("--without", "part to leave out", words.Without, [.. practical.Steps.Select(s => s.Place.Freedom.Optional).OfType<string>().Distinct()]);
        CheckWords("--move", "step for another lesson", words.Moved, [.. practical.Steps.Where(s => s.Place.Freedom.Elsewhere != OtherLesson.None).Select(s => s.Id)]);
        CheckWords("--alongside", "step to do meanwhile", words.Alongside, [.. practical.Steps.Where(s => s.Place.Freedom.Alongside is not null).Select(s => s.Id)]);
        if (words.Heatings > PlanSettings.MostHeatings(practical))
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"--heatings: {practical.Id} allows {PlanSettings.MostHeatings(practical)} at most"));
        }

        int students = words.Students ?? (2 * words.Groups);
        int most = words.Groups == 1 ? MostLookOn : MostOfAGroup * words.Groups;
        if (students < words.Groups || students > most)
        {
            faults.Add(string.Create(
                CultureInfo.InvariantCulture, $"--students: {students} students do not make {words.Groups} {(words.Groups == 1 ? "group" : "groups")}; expected {words.Groups} to {most}"));
        }

        if (words.Stagger >= words.Minutes)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"--stagger: the second wave would start after the bell; expected less than {words.Minutes:0.#} min"));
        }

        if (words.NoEmpty && practical.Readings.All(r => r.Id != "empty"))
        {
            faults.Add($"--no-empty: {practical.Id} has no reading of an empty vessel");
        }

        IReadOnlyDictionary<string, StepMinutes> times = Times();
        IReadOnlyDictionary<string, double> kit = Numbers(
            "--kit", words.Kit, practical.Kit.Select(k => k.Id), "a whole number from 1 to 1000", x => x >= 1 && x <= 1000 && Math.Floor(x) == x);
        return faults.Count > 0 ? null : new PlanChoice(
            Settings(balances, times, kit), words.Wanted, new PlanStock(words.Metre, prices), words.TooMuch(practical), words.Learned);
    }

    private PlanSettings Settings(
        Balance[] balances, IReadOnlyDictionary<string, StepMinutes> times, IReadOnlyDictionary<string, double> kit)
    {
        AcceptedPriors? learned = words.Learned?.Of(practical);
        PlanSettings settings = new PlanSettings(learned?.Practical ?? practical, words.Groups, balances, words.Minutes)
            .WithClass(words.Groups, words.Students ?? (2 * words.Groups))
            .WithTrials(words.Trials)
            .WithPrepared(words.Prepared)
            .WithStagger(words.Stagger)
            .WithConditions(words.Conditions);
        settings = words.Heatings is int heatings ? settings.WithHeatings(heatings) : settings;
        settings = words.Mass is double mass ? settings.WithSample(mass) : settings;
        settings = words.NoEmpty ? settings.WithUnread("empty") : settings;
        settings = words.Without.Aggregate(settings, (s, word) => s.WithLeftOut(word));
        settings = words.Moved.Aggregate(settings, (s, word) => s.WithMoved(word));
        settings = words.Alongside.Aggregate(settings, (s, word) => s.WithAlongside(word));
        settings = times.Aggregate(settings, (s, time) => s.WithTime(time.Key, time.Value));
        settings = learned is null ? settings : words.Learned!.ApplyTo(settings, learned);
        return kit.Aggregate(settings, (s, piece) => s.WithKit(piece.Key, (int)piece.Value));
    }

    /// <summary>One resolution for all balances, or one each.</summary>
    private Balance[] Balances()
    {
        var steps = new List<double>();
        foreach (string text in words.Resolutions)
        {
            if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double step) && ScaleInterval.IsOne(step) && step <= CoarsestStep)
            {
                steps.Add(step);
            }
            else
            {
                faults.Add($"--resolution: no balance steps by '{text}' g; expected 1, 2 or 5 times a power of ten, 1 at most{Several(text)}");
            }
        }

        if (steps.Count > 1 && words.Balances is int said && said != steps.Count)
        {
            faults.Add(string.Create(
                CultureInfo.InvariantCulture, $"--resolution: {steps.Count} are given for {said} balances; give one for all, or one each"));
        }

        if (steps.Count == 0)
        {
            steps.Add(UsualStep);
        }

        int number = steps.Count > 1 ? steps.Count : words.Balances ?? UsualBalances;
        return faults.Count > 0 ? [] : [.. Enumerable.Range(0, number).Select(i => steps[Math.Min(i, steps.Count - 1)])
            .Select(step => new Balance(step, words.Repeatability / step ?? Balance.UsualRepeatabilityInDivisions))];
    }

    private static string Several(string text) =>
        text.Contains(',', StringComparison.Ordinal) || text.Contains('+', StringComparison.Ordinal)
            ? "; write a full stop, and --resolution once for each balance" : "";

    private void CheckWords(string option, string kind, IReadOnlyList<string> said, string[] known) => faults.AddRange(
        said.Where(word => !known.Contains(word)).Select(word => $"{option}: {ConditionChoice.Unknown(practical, kind, word, known)}"));

    /// <summary>Words of the form <c>id=number</c>.</summary>
    private Dictionary<string, double> Numbers(
        string option, IReadOnlyList<string> said, IEnumerable<string> known, string expected, Func<double, bool> allowed)
    {
        var numbers = new Dictionary<string, double>(StringComparer.Ordinal);
        string[] ids = [.. known];
        foreach (string word in said)
        {
            string[] parts = word.Split('=');
            if (parts.Length == 2 && !ids.Contains(parts[0]))
            {
                faults.Add($"{option}: {ConditionChoice.Unknown(practical, "piece of kit", parts[0], ids)}");
            }
            else if (parts.Length != 2 || !double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
                || !double.IsFinite(number) || !allowed(number))
            {
                string hint = parts.Length == 2 ? NumberOption.CommaHint(parts[1]) : "";
                faults.Add($"{option}: '{word}' is not understood; expected a piece of kit, '=' and {expected}{hint}");
            }
            else if (!numbers.TryAdd(parts[0], number))
            {
                faults.Add($"{option}: '{parts[0]}' is given twice; give it once");
            }
        }

        return numbers;
    }

    /// <summary>Words of the form <c>step=least,likely,most</c>.</summary>
    private Dictionary<string, StepMinutes> Times()
    {
        var times = new Dictionary<string, StepMinutes>(StringComparer.Ordinal);
        string[] steps = [.. practical.Steps.Select(s => s.Id)];
        foreach (string word in words.Times)
        {
            string[] parts = word.Split('=');
            double[] numbers = parts.Length != 2 ? [] :
            [
                .. parts[1].Split(',').Select(t => double.TryParse(t, NumberStyles.Float, CultureInfo.InvariantCulture, out double x) ? x : double.NaN),
            ];
            if (parts.Length == 2 && !steps.Contains(parts[0]))
            {
                faults.Add($"--time: {ConditionChoice.Unknown(practical, "step", parts[0], steps)}");
            }
            else if (TimesOf(numbers) is not StepMinutes minutes)
            {
                faults.Add($"--time: '{word}' is not understood; expected a step, '=' and its least, likely and most minutes, such as cool=10,12,20 (or least and most, or one number)");
            }
            else if (!times.TryAdd(parts[0], minutes))
            {
                faults.Add($"--time: '{parts[0]}' is given twice; give it once");
            }
        }

        return times;
    }

    /// <summary>Three times, or least and most with the likely one half-way, or one that is certain.</summary>
    private static StepMinutes? TimesOf(double[] numbers)
    {
        StepMinutes? times = numbers.Length switch
        {
            1 => new StepMinutes(numbers[0], numbers[0], numbers[0]),
            2 => new StepMinutes(numbers[0], (numbers[0] + numbers[1]) / 2, numbers[1]),
            3 => new StepMinutes(numbers[0], numbers[1], numbers[2]),
            _ => null,
        };
        return times is { Least: >= 0, Most: > 0 and <= PlanSettings.LongestLesson } && times.Least <= times.Likely && times.Likely <= times.Most ? times : null;
    }
}
