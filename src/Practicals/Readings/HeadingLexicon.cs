namespace Calx.Practicals.Readings;

/// <summary>All that headings of a practical's table can mean.</summary>
internal sealed class HeadingLexicon
{
    // Common practice in class spreadsheets, no source. The first phrase of a line is the usual one.
    private static readonly (SaidOfGroup Kind, string[] Phrases)[] Usual =
    [
        (SaidOfGroup.Group, ["group", "group name", "team", "pair", "bench", "groups", "student", "students", "name",
            "names", "pupil", "pupils", "partners", "student name", "student names", "set"]),
        (SaidOfGroup.Trial, ["trial", "run", "attempt", "repeat", "replicate", "try", "trial number"]),
        (SaidOfGroup.Arm, ["arm", "condition", "treatment", "set up", "setup"]),
        (SaidOfGroup.Time, ["time", "time taken", "heating time", "time of heating", "date", "when"]),
        (SaidOfGroup.Observations, ["observations", "observation", "what was seen", "notes", "note", "comments",
            "comment", "remarks"]),
        (SaidOfGroup.Balance, ["balance", "balance used", "scales", "scale", "balance letter"]),
    ];

    private static readonly string[] TimesOfDay = ["time of day", "date", "when"];

    private static readonly string[] NamesOfReading =
        ["reading", "weighing", "measurement", "stage", "step", "what was weighed", "weighed", "item", "which reading"];

    private static readonly string[] NamesOfValue =
        ["value", "mass", "result", "measured value", "mass reading", "reading value", "measured mass", "reading"];

    private readonly HashSet<string> vessel;
    private readonly HashSet<string> material;

    public HeadingLexicon(ExpectedTable expected)
    {
        Names = expected.MaterialNames.ToDictionary(
            pair => HeadingText.Fold(pair.Key),
            pair => HeadingText.Read(pair.Value, new Dictionary<string, string[]>()).Words,
            StringComparer.Ordinal);
        vessel = [.. expected.VesselLabels.SelectMany(label => Text(label).Words)];
        material = [.. Names.Values.SelectMany(words => words)];
        // Where a clock is read, 'time' is its reading, not the time of day.
        bool clock = expected.Columns.Any(c => c.Kind == ExpectedKind.Gauge && c.Unit is "s" or "min" or "h");
        HeadingTarget[] said = [.. Usual.Select(u => Spoken(new ColumnMeaning.Said(u.Kind), u.Kind == SaidOfGroup.Time && clock ? TimesOfDay : u.Phrases))];
        Wide = [.. expected.Columns.Select(OfColumn), .. said];
        Long =
        [
            Spoken(new ColumnMeaning.ReadingName(), NamesOfReading),
            Spoken(new ColumnMeaning.ReadingValue(), NamesOfValue),
            .. said,
        ];
    }

    /// <summary>Folded formula to the words of its name.</summary>
    public IReadOnlyDictionary<string, string[]> Names { get; }

    /// <summary>Meanings in a table of one row a group.</summary>
    public IReadOnlyList<HeadingTarget> Wide { get; }

    /// <summary>Meanings in a table of one row a reading.</summary>
    public IReadOnlyList<HeadingTarget> Long { get; }

    /// <summary>Takes a heading apart.</summary>
    public HeadingText Text(string heading) => HeadingText.Read(heading, Names);

    /// <summary>Whether the word names a part that stands on the pan.</summary>
    public bool IsVessel(string word) => vessel.Contains(word);

    /// <summary>Whether the word names what is weighed.</summary>
    public bool IsMaterial(string word) => material.Contains(word);

    private HeadingTarget OfColumn(ExpectedColumn column)
    {
        List<HeadingPhrase> phrases =
        [
            new(Text(column.Label), true, false),
            new(Text(column.Id), true, false),
            .. column.Aliases.Select(alias => new HeadingPhrase(Text(alias), false, false)),
        ];
        if (column.RepeatLabel is string repeat)
            phrases.Add(new HeadingPhrase(Text(repeat), true, true));
        return new HeadingTarget(column.Label, column, null, phrases);
    }

    private HeadingTarget Spoken(ColumnMeaning meaning, string[] phrases) => new(
        meaning.Word,
        null,
        meaning,
        [.. phrases.Select((phrase, i) => new HeadingPhrase(Text(phrase), i == 0, false))],
        meaning is ColumnMeaning.Said { Kind: SaidOfGroup.Observations });
}
