namespace Calx.Practicals.Definition;

/// <summary>
/// A practical as its one file tells it: everything else that Calx says of it follows from here. Made by
/// <see cref="PracticalReader"/>, which has checked that all its parts fit together. The file's format is described in
/// docs/methods/practical-file.md.
/// </summary>
public sealed class Practical
{
    private readonly PracticalHeading heading;
    private readonly Bench bench;
    private readonly Course course;
    private readonly Asked asked;
    private readonly LessonPlan lesson;
    private readonly Handouts handouts;

    internal Practical(
        PracticalHeading heading, Bench bench, Course course, Asked asked, LessonPlan lesson, Handouts handouts, string sourceText)
    {
        this.heading = heading;
        this.bench = bench;
        this.course = course;
        this.asked = asked;
        this.lesson = lesson;
        this.handouts = handouts;
        SourceText = sourceText;
    }

    /// <summary>Its id (file key <c>practical</c>).</summary>
    public string Id => heading.Id;

    /// <summary>Number of this version of its file, from 1.</summary>
    public int Version => heading.Version;

    /// <summary>Its title.</summary>
    public string Title => heading.Title;

    /// <summary>The question of the lesson.</summary>
    public string Question => heading.Question;

    /// <summary>What happens in it: as the file says, or as follows from the rest of it.</summary>
    public PracticalFamily Family => heading.Family ?? PracticalFamilies.Of(this);

    /// <summary>Its substances.</summary>
    public IReadOnlyList<Material> Materials => bench.Materials;

    /// <summary>Its reactions, each balanced.</summary>
    public IReadOnlyList<Reaction> Reactions => bench.Reactions;

    /// <summary>What stands on the pan and does not react.</summary>
    public IReadOnlyList<Part> Parts => bench.Parts;

    /// <summary>Where materials are.</summary>
    public IReadOnlyList<Place> Places => bench.Places;

    /// <summary>Quantities of the bench that are no masses.</summary>
    public IReadOnlyList<Gauge> Gauges => bench.Gauges;

    /// <summary>What a group reads, in the order of the sheet.</summary>
    public IReadOnlyList<ReadingDefinition> Readings => asked.Readings;

    /// <summary>Ready-made masses that teachers keep instead of readings.</summary>
    public IReadOnlyList<ColumnDefinition> Columns => asked.Columns;

    /// <summary>Mass against time, or null where the practical takes no series.</summary>
    public SeriesDefinition? Series => asked.Series;

    /// <summary>Numbers that differ from group to group.</summary>
    public IReadOnlyList<Parameter> Parameters => course.Parameters;

    /// <summary>Variants that some groups do; empty where all do the same.</summary>
    public IReadOnlyList<Arm> Arms => course.Arms;

    /// <summary>What happens, in order.</summary>
    public IReadOnlyList<ProcedureEvent> Procedure => course.Procedure;

    /// <summary>Values asked of the readings.</summary>
    public IReadOnlyList<QuantityDefinition> Quantities => asked.Quantities;

    /// <summary>What the class is judged on.</summary>
    public FindingsDefinition Findings => asked.Findings;

    /// <summary>Statements that the class is to come to.</summary>
    public IReadOnlyList<ConclusionDefinition> Conclusions => asked.Conclusions;

    /// <summary>What can go wrong in a group.</summary>
    public IReadOnlyList<FaultDefinition> Faults => course.Faults;

    /// <summary>What a group may have seen.</summary>
    public IReadOnlyList<Observation> Observations => course.Observations;

    /// <summary>What can still be done to tell causes apart.</summary>
    public IReadOnlyList<ActionDefinition> Actions => course.Actions;

    /// <summary>What may be said of a whole class and changes what is to be expected.</summary>
    public IReadOnlyList<ConditionDefinition> Conditions => course.Conditions;

    /// <summary>How warm what is weighed still is, or null where nothing is hot.</summary>
    public CoolingDefinition? Cooling => course.Cooling;

    /// <summary>The steps of the lesson, in order.</summary>
    public IReadOnlyList<LessonStep> Steps => lesson.Steps;

    /// <summary>What a group needs.</summary>
    public IReadOnlyList<KitItem> Kit => lesson.Kit;

    /// <summary>The most that a class may use.</summary>
    public AmountLimits Limits => lesson.Limits;

    /// <summary>Which amounts a plan looks at and what more of the sample does; null where the limits say enough.</summary>
    public AmountsDefinition? Amounts => lesson.Amounts;

    /// <summary>What holds of the lesson besides its steps.</summary>
    public ClassroomDefinition Classroom => lesson.Classroom;

    /// <summary>Whether a sample is put out and weighed in; otherwise it is what a reaction uses up or makes, or there is none.</summary>
    public bool WeighsOutSample => Amounts is not null && Kit.Any(item => item.Need.IsSample);

    /// <summary>Hazards with their controls.</summary>
    public IReadOnlyList<Hazard> Hazards => lesson.Hazards;

    /// <summary>Drawings of the apparatus; may be none.</summary>
    public IReadOnlyList<Drawing> Drawings => lesson.Drawings;

    /// <summary>Values that a student works out on the sheet.</summary>
    public IReadOnlyList<AnswerDefinition> Answers => asked.Answers;

    /// <summary>What may be asked beyond the sheet: more values, and judgements; may be none.</summary>
    public IReadOnlyList<AskedAnswer> FurtherAnswers => asked.FurtherAnswers;

    /// <summary>All that may be asked: what is on the sheet, then what goes beyond it.</summary>
    public IReadOnlyList<AskedAnswer> AllAnswers => [.. asked.Answers, .. asked.FurtherAnswers];

    /// <summary>What students read on paper besides readings, answers and cautions.</summary>
    public SheetDefinition Sheet => handouts.Sheet;

    /// <summary>What the technician is told besides the kit.</summary>
    public TechnicianDefinition Technician => handouts.Technician;

    /// <summary>What is done at once where something has gone wrong.</summary>
    public IReadOnlyList<EmergencyAction> Emergencies => handouts.Emergencies;

    /// <summary>Whether the change of mass that the lesson is about is the mass of a product in a vessel, and no gain or loss.</summary>
    public bool WeighsProduct => Quantities.FirstOrDefault(q => q.Id == Findings.Change) is QuantityDefinition change
        && LoadedReadings.IsContents(change, LoadedReadings.Of(Readings, Procedure));

    /// <summary>The text of the file that it was read from: what is kept with results made by it.</summary>
    public string SourceText { get; }

    /// <summary>The reading with an id.</summary>
    /// <exception cref="ArgumentException">There is no such reading; ids in a practical's own parts always exist.</exception>
    public ReadingDefinition Reading(string id) =>
        Readings.FirstOrDefault(r => r.Id == id) ?? throw new ArgumentException($"No reading '{id}' in {Id}.", nameof(id));

    /// <summary>Whether what the procedure repeats makes a reaction go on; false where it only dries, or repeats nothing.</summary>
    public bool RepeatsReaction => Procedure.OfType<RepeatEvent>().Any(r => r.Do.Any(e => e is ReactEvent));

    /// <summary>The ready-made column with an id, or null.</summary>
    public ColumnDefinition? FindColumn(string id) => Columns.FirstOrDefault(c => c.Id == id);

    /// <summary>The same with other rates of faults and other shares of kit that break; what is not named stays as it is.</summary>
    /// <param name="rates">Share of groups by cause.</param>
    /// <param name="breaks">Share of pieces that break in a lesson, by kit.</param>
    /// <param name="provenance">Where the rates come from.</param>
    internal Practical With(IReadOnlyDictionary<string, double> rates, IReadOnlyDictionary<string, double> breaks, Provenance provenance) => new(
        heading,
        bench,
        course with { Faults = [.. Faults.Select(f => rates.TryGetValue(f.Cause, out double rate) ? f.With(rate, provenance) : f)] },
        asked,
        lesson with { Kit = [.. Kit.Select(k => breaks.TryGetValue(k.Id, out double share) ? k.WithBreaks(share) : k)] },
        handouts,
        SourceText);
}
