using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Slips;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>What one group wrote down, made ready to be held against the points.</summary>
internal sealed class GroupProblem
{
    private static readonly string[] Denials = ["NO", "NOT", "WITHOUT", "NEVER", "NONE"];

    /// <summary>A denial stands so many words before what it denies, at most: 'no white smoke'.</summary>
    private const int WordsOfDenial = 3;

    private GroupProblem(HiddenView view, Unknowns unknowns, WeighedRow[] rows, IReadOnlyList<SlipCandidate>[] slips, string[] seen)
    {
        View = view;
        Unknowns = unknowns;
        Rows = rows;
        Slips = slips;
        Seen = seen;
        Grams = [.. rows.Select(r => r.Grams)];
    }

    /// <summary>The points through as many rounds as the group heated.</summary>
    public HiddenView View { get; }

    /// <summary>Parts and amounts.</summary>
    public Unknowns Unknowns { get; }

    /// <summary>The numbers written down.</summary>
    public WeighedRow[] Rows { get; }

    /// <summary>The same in g.</summary>
    public double[] Grams { get; }

    /// <summary>For each row what the balance may have shown though something else was written; empty where the practical
    /// knows no slips.</summary>
    public IReadOnlyList<SlipCandidate>[] Slips { get; }

    /// <summary>Ids of the observations noted.</summary>
    public string[] Seen { get; }

    /// <summary>Whether the class notes observations, so that silence says something.</summary>
    public bool SilenceCounts { get; private init; }

    /// <summary>Minutes since the flame was put out at the last weighing, or null where they were not noted.</summary>
    public double? MinutesCooled { get; private init; }

    /// <summary>Finest division among the rows, in g.</summary>
    public double DivisionInGrams { get; private init; }

    /// <summary>Makes a group ready.</summary>
    public static GroupProblem Of(
        HiddenGroups hidden, GroupReadings group, BalanceReport balance, IReadOnlyList<AmountPrior> amounts, bool silenceCounts, AtomicWeights weights)
    {
        Practical practical = hidden.Circumstances.Practical;
        TakenReading[] taken = [.. group.Readings.Where(r => practical.Readings.Any(known => known.Id == r.BaseId))];
        int rounds = Math.Clamp(RoundsOf(hidden, taken), 1, Math.Max(1, hidden.Program.Dimensions.Rounds - 1));
        HiddenView view = hidden.View(rounds, AmountCentre.Of(hidden, group, amounts));
        Dictionary<string, int> places = view.Weighings.Select((w, i) => (w.Id, i)).ToDictionary(StringComparer.Ordinal);
        FaultEffect.Pen? pen = practical.Faults.Select(f => f.Effect).OfType<FaultEffect.Pen>().FirstOrDefault();
        var rows = new List<WeighedRow>();
        var slips = new List<IReadOnlyList<SlipCandidate>>();
        // In the order of the bench, whatever the order in which they were typed: the same evidence, the same answer.
        foreach (TakenReading reading in taken.Where(r => places.ContainsKey(r.Id)).OrderBy(r => places[r.Id]))
        {
            InstrumentErrors? errors = practical.Reading(reading.BaseId).Errors;
            decimal division = balance.ResolutionOf(practical.Reading(reading.BaseId));
            rows.Add(new WeighedRow(
                reading.Id, [(places[reading.Id], 1)], reading.Value.AsDouble, (double)division, errors?.Spread ?? balance.RepeatabilityInGrams, tared: true, weighed: errors is null));
            slips.Add(pen is null ? [] : PenSlips.Displayed(reading.Value, division, pen));
        }

        foreach (TakenReading column in group.DerivedColumns.OrderBy(c => c.Id, StringComparer.Ordinal))
        {
            if (RowOf(practical, column, taken, view, balance, weights) is WeighedRow row)
            {
                rows.Add(row);
                slips.Add([]);
            }
        }

        return new GroupProblem(
            view, new Unknowns(practical, view.Weighings, amounts, Shown), [.. rows], [.. slips], SeenBy(practical, group))
        {
            SilenceCounts = silenceCounts,
            MinutesCooled = CoolingEvidence.MinutesIn(group),
            DivisionInGrams = rows.Where(r => r.IsWeighed).Select(r => r.DivisionInGrams).DefaultIfEmpty((double)balance.ResolutionInGrams).Min(),
        };

        double Shown(int weighing) => group.Find(view.Weighings[weighing].Id)?.Value.AsDouble ?? 0;
    }

    /// <summary>The observations of the practical that a group noted, by id: as its id, its label or another word for it.</summary>
    public static string[] SeenBy(Practical practical, GroupReadings group) =>
    [
        .. practical.Observations.Where(o => group.Remarks.Observations.Any(written => Means(o, written))).Select(o => o.Id),
    ];

    /// <summary>The words stand in what was written, and no 'no' shortly before them: 'white smoke when the lid was lifted' means
    /// smoke, 'no smoke' does not.</summary>
    private static bool Means(Observation observation, string written)
    {
        string said = Plain(written);
        return observation.Aliases.Append(observation.Id).Append(observation.Label).Select(Plain).Any(word =>
        {
            int at = said.IndexOf(word, StringComparison.Ordinal);
            return at >= 0 && !said[..at].Split(' ', StringSplitOptions.RemoveEmptyEntries).TakeLast(WordsOfDenial).Any(Denials.Contains);
        });

        // Spaces at both ends, so that only whole words are found.
        static string Plain(string text) => string.Concat(
            " ", string.Join(' ', text.Replace('-', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).ToUpperInvariant(), " ");
    }

    private static int RoundsOf(HiddenGroups hidden, TakenReading[] taken)
    {
        HashSet<string> repeated = [.. hidden.Program.Weighings(2).Where(w => w.Occurrence == 2).Select(w => w.Reading)];
        return taken.Where(r => repeated.Contains(r.BaseId)).Select(r => r.Occurrence).DefaultIfEmpty(0).Max();
    }

    /// <summary>A ready-made mass tells something only where the readings that it stands for are not all there.</summary>
    private static WeighedRow? RowOf(
        Practical practical, TakenReading column, TakenReading[] taken, HiddenView view, BalanceReport balance, AtomicWeights weights)
    {
        if (practical.FindColumn(column.BaseId) is not ColumnDefinition definition
            || definition.Stands.Names.All(name => taken.Any(r => r.BaseId == name)))
        {
            return null;
        }

        double[] line = ReadingLine.Of(practical, definition.Stands, weights, _ => 0).At(view.Weighings);
        (int, double)[] weighings = [.. line.Select((c, i) => (i, c)).Where(x => x.c != 0)];
        return new WeighedRow(
            column.Id,
            weighings,
            column.Value.AsDouble,
            (double)balance.ResolutionInGrams,
            balance.RepeatabilityInGrams,
            definition.Kind == ColumnKind.Tared);
    }
}
