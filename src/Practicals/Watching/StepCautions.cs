using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>
/// What to take care of at each place of a trial's route: of the practical's hazards and faults, those that the place has to do
/// with. A fault belongs where what it changes is done: at the flame what changes a reaction or is lost, at the weighing what
/// befalls a weighing, before it what is put in.
/// </summary>
internal sealed class StepCautions
{
    private readonly Practical practical;
    private readonly TrialRoute trial;
    private readonly IReadOnlyList<string>[] cautions;
    private readonly string hot;

    /// <summary>Gathers them for a trial's route.</summary>
    public StepCautions(Practical practical, TrialRoute trial, EngineLanguage language)
    {
        this.practical = practical;
        this.trial = trial;
        hot = new AdviceTexts(language).Hot;
        cautions = [.. Enumerable.Range(0, trial.Places.Count).Select(At)];
    }

    /// <summary>The cautions of a place, the most urgent first; none behind the last or where the class is together.</summary>
    public IReadOnlyList<string> Of(int place) => place >= 0 && place < cautions.Length ? cautions[place] : [];

    private string[] At(int place) =>
    [
        .. (IsHot(place) ? new[] { hot } : [])
            .Concat(practical.Hazards.Where(h => Concerns(h, place)).Select(h => Sentence(h.Control)))
            .Concat(practical.Faults.Where(f => f.Caution is not null && Concerns(f, place)).Select(f => Sentence(f.Caution!)))
            .Distinct(),
    ];

    private static string Sentence(string clause) => $"{char.ToUpperInvariant(clause[0])}{clause[1..].TrimEnd('.')}.";

    /// <summary>From a flame to the weighing after it, and from the first flame of the heatings to the end: nobody tells by
    /// looking what is still hot.</summary>
    private bool IsHot(int place)
    {
        int flame = place;
        while (flame >= 0 && !trial.Places[flame].Step.Flame && (flame == place || trial.Places[flame].WeighingId is null))
        {
            flame--;
        }

        bool sinceFlame = flame >= 0 && trial.Places[flame].Step.Flame;
        return !trial.Places[place].Step.Together && (sinceFlame || IsBehindFirstFlame(place));
    }

    private int FirstFlame => trial.Find(0, p => p.Step.Flame && p.Part == RoutePart.Heating);

    private bool IsBehindFirstFlame(int place) => FirstFlame is int flame && flame >= 0 && place >= flame;

    /// <summary>What is put in is hazardous until it has been heated, what burns in air only at the flame, what is made once it has been, a gas while it is made; a thing or
    /// an act at the flame and while it cools.</summary>
    private bool Concerns(Hazard hazard, int place)
    {
        RoutePlace at = trial.Places[place];
        if (at.Step.Together)
        {
            return false;
        }

        if (FirstFlame < 0)
        {
            return ConcernsWithoutFlame(hazard, place);
        }

        if (hazard.Material is null)
        {
            return IsBehindFirstFlame(place) && at.Part == RoutePart.Heating && at.WeighingId is null;
        }

        return IsPutIn(hazard.Material)
            ? place >= PutInAt(hazard.Material) && place < trial.BehindFlame(FirstFlame) && (at.Step.Flame || !Burns(hazard.Material))
            : IsBehindFirstFlame(place) && at.Step.Flame == practical.Materials.Any(m => m.Id == hazard.Material && m.Air);
    }

    /// <summary>Where nothing is heated in rounds: what is put in from then on, what is made from where all that it is made of is put in, a
    /// thing or an act wherever nothing is read.</summary>
    private bool ConcernsWithoutFlame(Hazard hazard, int place) =>
        hazard.Material is not string material ? trial.Places[place].WeighingId is null
        : place >= (IsPutIn(material) ? PutInAt(material) : MadeOf(material).Where(IsPutIn).Select(PutInAt).DefaultIfEmpty(0).Max());

    private IEnumerable<string> MadeOf(string material) => practical.Reactions
        .Where(r => r.Products.Any(t => t.Material == material)).SelectMany(r => r.Reactants).Select(t => t.Material);

    /// <summary>Whether it reacts with the air once it is heated.</summary>
    private bool Burns(string material) => practical.Reactions.Any(r =>
        r.Reactants.Any(t => t.Material == material) && r.Reactants.Any(t => practical.Materials.Any(m => m.Id == t.Material && m.Air)));

    private bool IsPutIn(string material) => Adds(material).Any();

    private IEnumerable<AddEvent> Adds(string material) => practical.Procedure.SelectMany(Flat).OfType<AddEvent>()
        .Where(a => a.Material == material);

    private int PutInAt(string material) => SegmentOf(Adds(material).First()).From;

    private bool Concerns(FaultDefinition fault, int place)
    {
        LessonStep step = trial.Places[place].Step.Step;
        return fault.Effect switch
        {
            FaultEffect.Pen => step.Reading is not null,
            FaultEffect.Zero zero => step.Reading is string reading && (zero.Reading is null || zero.Reading == reading),
            FaultEffect.Off off => step.Reading is string reading && practical.Reading(reading).Pan.Parts.Contains(off.Part),
            FaultEffect.Warm warm => step.Reading == warm.Reading || Cools(place, warm.Reading),
            FaultEffect.Gain gain => step.Reading == gain.Reading || (trial.Places[place].Step.Flame && ReadNext(place) == gain.Reading),
            FaultEffect.Set set => Concerns(set, place),
            _ => false,
        };
    }

    private bool Cools(int place, string reading) => place > 0 && trial.Places[place - 1].Step.Flame
        && !trial.Places[place].Step.Flame && ReadNext(place) == reading;

    private string? ReadNext(int place) => trial.Find(place, p => p.WeighingId is not null) is int next && next >= 0
        ? trial.Places[next].Step.Step.Reading : null;

    private bool Concerns(FaultEffect.Set set, int place) =>
        practical.Procedure.SelectMany(Flat).Where(e => e.Formulas.Any(f => set.Settings.Any(s => f.Names.Contains(s.Parameter))))
            .Any(e => Concerns(e, place));

    private bool Concerns(ProcedureEvent done, int place)
    {
        if (ReadAfter(done) is not string reading || ReadNext(place) != reading)
        {
            return false;
        }

        int flame = trial.Find(SegmentOf(done).From, p => p.Step.Flame && p.Part == RoutePart.Heating);
        bool heated = flame >= 0 && flame <= SegmentOf(done).To;
        bool isFlame = trial.Places[place].Step.Flame;
        return !heated ? !isFlame
            : done is ReactEvent or LoseEvent ? isFlame
            // What comes after the reactions comes while it cools, and what comes before them before the flame.
            : !isFlame && IsBehindFirstFlame(place) == FollowsReaction(done);
    }

    private bool FollowsReaction(ProcedureEvent done) =>
        practical.Procedure.SelectMany(Flat).TakeWhile(e => !ReferenceEquals(e, done)).Any(e => e is ReactEvent);

    /// <summary>The places between the reading before something is done and the one behind it.</summary>
    private (int From, int To) SegmentOf(ProcedureEvent done)
    {
        string? reading = ReadAfter(done);
        int to = reading is null ? -1 : trial.Find(0, p => p.Step.Step.Reading == reading);
        int from = to;
        while (from > 0 && trial.Places[from - 1].WeighingId is null)
        {
            from--;
        }

        return (Math.Max(from, 0), to);
    }

    /// <summary>The reading that follows something in the procedure.</summary>
    private string? ReadAfter(ProcedureEvent done) => practical.Procedure.SelectMany(Flat).SkipWhile(e => !ReferenceEquals(e, done))
        .OfType<ReadEvent>().FirstOrDefault()?.Reading;

    private static IEnumerable<ProcedureEvent> Flat(ProcedureEvent one) => one is RepeatEvent repeat ? repeat.Do.SelectMany(Flat) : [one];
}
