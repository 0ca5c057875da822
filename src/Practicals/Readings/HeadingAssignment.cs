using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>Settles what each heading of a row means, the surest first, and says so where nothing can be settled.</summary>
internal sealed class HeadingAssignment
{
    private static readonly HeadingRule[] Rounds =
    [
        HeadingRule.Core, HeadingRule.Spelling, HeadingRule.PartEmpty, HeadingRule.PartWhen, HeadingRule.Part, HeadingRule.Short,
    ];

    private readonly IReadOnlyList<HeadingCell> cells;
    private readonly Dictionary<HeadingCell, HeadingCandidate> chosen = [];
    private readonly Dictionary<HeadingCell, string> declined = [];
    private readonly Dictionary<HeadingCell, ColumnMatch> settled = [];

    private readonly HeadingTexts texts;
    private readonly Wording wording;

    private HeadingAssignment(IReadOnlyList<HeadingCell> cells, EngineLanguage language)
    {
        this.cells = cells;
        (texts, wording) = (new HeadingTexts(language), new Wording(language));
    }

    /// <summary>The fault of the whole row, or null.</summary>
    public HeadingFault? Fault { get; private set; }

    /// <summary>The columns in order; valid where there is no fault.</summary>
    public IReadOnlyList<ColumnMatch> Columns => [.. cells.Select(cell => settled[cell])];

    /// <summary>Settles a row of headings.</summary>
    /// <param name="cells">The headings from left to right.</param>
    /// <param name="expected">What the practical expects; used for headings that only their place explains.</param>
    public static HeadingAssignment Of(IReadOnlyList<HeadingCell> cells, ExpectedTable expected, EngineLanguage language)
    {
        HeadingAssignment assignment = new(cells, language);
        assignment.FindTwins();
        foreach (HeadingRule round in Rounds)
            assignment.Settle(round);
        assignment.SettleTies();
        assignment.Number();
        assignment.ByOrder(expected);
        assignment.Report();
        return assignment;
    }

    private IEnumerable<HeadingCell> Open => cells.Where(c => !chosen.ContainsKey(c) && !declined.ContainsKey(c));

    private void FindTwins()
    {
        for (int i = 0; i < cells.Count; i++)
        {
            HeadingCell? twin = cells.Take(i).FirstOrDefault(cells[i].ReadsLike);
            bool matters = cells[i].Best.Any(c => c.Target.Column is not null || !c.Target.MayBeMany) || cells[i].IsNumberedMass;
            if (twin is not null && matters)
                Fault ??= Twice(twin, cells[i]);
        }
    }

    private HeadingFault Twice(HeadingCell first, HeadingCell second) =>
        new(texts.Twice(second.Text.Trim(), Letter(first), Letter(second)), second.Column);

    private void Settle(HeadingRule round)
    {
        List<(HeadingCell Cell, HeadingCandidate Candidate)> claims = [];
        foreach (HeadingCell cell in Open.Where(c => c.Best.Count > 0 && InRound(c.Best[0].Rule, round)).ToList())
        {
            HeadingCandidate[] free = Free(cell);
            if (free.Length == 1)
                claims.Add((cell, free[0]));
            else if (free.Length == 0)
                Decline(cell);
        }
        foreach (var sameTarget in claims.GroupBy(claim => claim.Candidate.Target))
            Claim(sameTarget.Key, [.. sameTarget]);
    }

    private static bool InRound(HeadingRule rule, HeadingRule round) =>
        round == HeadingRule.Core ? rule <= HeadingRule.Core : rule == round;

    private HeadingCandidate[] Free(HeadingCell cell) => [.. cell.Best.Where(c => HolderOf(c.Target) is null)];

    private HeadingCell? HolderOf(HeadingTarget target) =>
        target.MayBeMany ? null : chosen.Where(pair => pair.Value.Target == target).Select(pair => pair.Key).FirstOrDefault();

    private void Decline(HeadingCell cell)
    {
        HeadingTarget target = cell.Best[0].Target;
        declined[cell] = texts.AlsoReads(target.Name, Letter(HolderOf(target)!));
    }

    private void Claim(HeadingTarget target, List<(HeadingCell Cell, HeadingCandidate Candidate)> claims)
    {
        if (claims.Count == 1 || target.MayBeMany)
        {
            foreach ((HeadingCell cell, HeadingCandidate candidate) in claims)
                chosen[cell] = candidate;
        }
        else if (target.Column is null)
        {
            // 'Group' before 'Names', else the leftmost: what is left is words, and is not lost from the file.
            (HeadingCell Cell, HeadingCandidate Candidate) first = claims.OrderBy(claim => claim.Candidate.Rule).First();
            chosen[first.Cell] = first.Candidate;
            foreach (var other in claims.Where(claim => claim.Cell != first.Cell))
                Decline(other.Cell);
        }
        else if (claims[0].Candidate.IsSure)
        {
            Fault ??= new HeadingFault(
                texts.BothMean(
                    Letter(claims[0].Cell), claims[0].Cell.Text.Trim(), Letter(claims[1].Cell), claims[1].Cell.Text.Trim(), target.Name),
                claims[1].Cell.Column);
        }
        else
        {
            string letters = wording.AllAnd([.. claims.Select(claim => Letter(claim.Cell))]);
            foreach (var claim in claims)
                declined[claim.Cell] = texts.CouldBothBe(letters, target.Name);
        }
    }

    // What ties between two readings is settled once a surer heading has taken one of them, and never otherwise.
    private void SettleTies()
    {
        bool settledOne = true;
        while (settledOne)
        {
            settledOne = false;
            foreach (HeadingCell cell in Open.Where(c => c.Best.Count > 0).ToList())
            {
                HeadingCandidate[] free = Free(cell);
                if (free.Length == 1)
                    chosen[cell] = free[0];
                else if (free.Length == 0)
                    Decline(cell);
                settledOne |= free.Length <= 1;
            }
        }
        foreach (HeadingCell cell in Open.Where(c => c.Best.Count > 1).ToList())
            declined[cell] = texts.CouldBe(wording.AllOr([.. cell.Best.Select(c => wording.Quoted(c.Target.Name))]));
    }

    private void Number()
    {
        foreach (var repeated in chosen.Where(pair => pair.Value.Target.Column is not null).GroupBy(p => p.Value.Target).ToList())
        {
            ExpectedColumn column = repeated.Key.Column!;
            IReadOnlyList<KeyValuePair<HeadingCell, HeadingCandidate>> members = [.. repeated.OrderBy(p => p.Key.Column)];
            int[] numbers = RepeatNumbers.Of([.. members.Select(m => (m.Value, m.Key.Words))]);
            for (int i = 0; i < members.Count; i++)
                Place(members[i].Key, members[i].Value, column, numbers[i]);
        }
    }

    private void Place(HeadingCell cell, HeadingCandidate candidate, ExpectedColumn column, int occurrence)
    {
        if (occurrence > column.Repeats)
        {
            chosen.Remove(cell);
            declined[cell] = texts.TooMany(occurrence.InFigures(), column.Label, column.Repeats.InFigures());
            return;
        }
        ColumnMeaning meaning = column.IsReading
            ? new ColumnMeaning.Reading(column.Id, occurrence)
            : new ColumnMeaning.ReadyMade(column.Id);
        ColumnMatch? twin = settled.Values.FirstOrDefault(match => match.Meaning == meaning);
        if (twin is not null)
        {
            Fault ??= new HeadingFault(
                texts.BothWeighing(
                    twin.ColumnLetter, twin.Heading.Trim(), Letter(cell), cell.Text.Trim(), occurrence.InFigures(), column.Label),
                cell.Column);
        }
        settled[cell] = new ColumnMatch(cell.Text, cell.Column, meaning, candidate.MatchedBy, cell.Words.Unit);
    }

    // 'Mass 1, Mass 2, Mass 3' name no reading; where nothing else does, they are the practical's readings in order.
    private void ByOrder(ExpectedTable expected)
    {
        HeadingCell[] numbered = [.. Open.Where(c => c.IsNumberedMass).OrderBy(c => c.Words.Number)];
        ExpectedColumn[] readings = [.. expected.Readings.Where(r => r.Kind == ExpectedKind.Weighing)];
        bool named = settled.Values.Any(match => match.Meaning is ColumnMeaning.Reading);
        bool inOrder = numbered.Select((cell, i) => cell.Words.Number == i + 1).All(right => right);
        int further = numbered.Length - readings.Length;
        if (named || !inOrder || readings.Length == 0 || further < 0 || further >= readings[^1].Repeats)
            return;
        for (int i = 0; i < numbered.Length; i++)
        {
            ExpectedColumn reading = readings[Math.Min(i, readings.Length - 1)];
            ColumnMeaning meaning = new ColumnMeaning.Reading(reading.Id, Math.Max(1, i - readings.Length + 2));
            settled[numbered[i]] =
                new ColumnMatch(numbered[i].Text, numbered[i].Column, meaning, MatchedBy.Order, numbered[i].Words.Unit);
        }
    }

    private void Report()
    {
        foreach (HeadingCell cell in cells.Where(c => !settled.ContainsKey(c)))
        {
            settled[cell] = chosen.TryGetValue(cell, out HeadingCandidate? said) && said.Target.Said is ColumnMeaning meaning
                ? new ColumnMatch(cell.Text, cell.Column, meaning, said.MatchedBy, cell.Words.Unit)
                : new ColumnMatch(
                    cell.Text, cell.Column, new ColumnMeaning.Ignored(WhyIgnored(cell)), MatchedBy.Nothing, cell.Words.Unit);
        }
    }

    private string WhyIgnored(HeadingCell cell)
    {
        if (declined.TryGetValue(cell, out string? reason))
            return reason;
        return cell.WrongUnit is HeadingCandidate wrong
            ? texts.WrongUnit(wrong.Target.Name, cell.Words.Unit ?? string.Empty)
            : texts.NotKnown;
    }

    private static string Letter(HeadingCell cell) => CellPosition.LetterOf(cell.Column);
}

/// <summary>Why a row of headings cannot be used.</summary>
internal sealed record HeadingFault(string Reason, int Column);
