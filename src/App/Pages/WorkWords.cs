using Calx.Practicals.Definition;

namespace Calx.App.Pages;

/// <summary>
/// What pages call the work of a practical. Its rounds are heated or dried; some burn something without heating what is weighed; and
/// where nothing grows hot, nothing is said of flames or of cooling.
/// </summary>
/// <param name="practical">The practical.</param>
public sealed class WorkWords(Practical practical)
{
    private readonly bool isDried = practical.Findings.ConstantMass?.By == RoundsBy.Drying;

    /// <summary>Whether a flame burns.</summary>
    public bool HasFlame { get; } = practical.Kit.Any(k => k.Flame);

    /// <summary>Whether anything grows hot.</summary>
    public bool IsHot => HasFlame || isDried || practical.Cooling is not null;

    /// <summary>Whether groups decide if they go on to constant mass.</summary>
    public bool Repeats => practical.Findings.ConstantMass is not null;

    /// <summary>What a group does that has not come to constant mass.</summary>
    public string Again => isDried ? "Dry again" : "Reheat";

    /// <summary>The same within a sentence.</summary>
    public string AgainVerb => isDried ? "dry again" : "heat again";

    /// <summary>The question that a group decides.</summary>
    public string AgainOrStop => isDried ? "Dry again or stop?" : "Heat again or stop?";

    /// <summary>The same, as a setting names it.</summary>
    public string AgainOrStopSetting => isDried ? "dry again or stop" : "reheat or stop";

    /// <summary>A group that had stopped goes on.</summary>
    public string AgainAfterAll => isDried ? "We dry again after all" : "We reheat after all";

    /// <summary>A group stops, though it has not come to constant mass.</summary>
    public string NoFurther => $"Stop here: no further {Round}";

    /// <summary>Where a group stands that has a decision to take.</summary>
    public string WeighedAfter => $"weighed after {Round}";

    /// <summary>One of the rounds that are repeated.</summary>
    public string Round => isDried ? "drying" : "heating";

    /// <summary>The last minute in which a round begins.</summary>
    public string LastRoundBy => $"last {Round} starts by";

    /// <summary>A group says that its flame burns, where it should be out.</summary>
    public string StillAtIt => BurnsForHeating ? "We are still heating" : "The flame still burns";

    /// <summary>The flame burns again.</summary>
    public string GoesOn => BurnsForHeating ? "The heating goes on" : "The flame burns on";

    /// <summary>The last minute of flames.</summary>
    public string FlamesOutBy => BurnsForHeating ? "gas off by" : "flames out by";

    /// <summary>The first words of STOP.</summary>
    public string StopFirst => BurnsForHeating ? "Gas off" : HasFlame ? "Flames out" : "Hands off";

    /// <summary>The heading for a group that has nothing to go on with.</summary>
    public string StopAndWait => HasFlame ? $"{StopFirst}, and wait for your teacher" : "Stop, and wait for your teacher";

    /// <summary>What becomes of what stands on the bench.</summary>
    public string LeaveIt => IsHot ? "Leave hot things where they are." : "Leave everything where it is.";

    /// <summary>The first thing to do where something broke.</summary>
    public string WhenBroken => BurnsForHeating ? "Turn the gas off, leave hot things where they are, and tell your teacher."
        : HasFlame ? "Put the flame out, leave hot things where they are, and tell your teacher."
        : IsHot ? "Leave hot things where they are, and tell your teacher."
        : "Leave everything where it is, and tell your teacher.";

    /// <summary>What the sample is in when it is weighed first.</summary>
    public string Vessel => practical.Parts.FirstOrDefault(p => practical.Readings.Any(r => r.Pan.Parts.Contains(p.Id)))?.Label ?? "vessel";

    /// <summary>How to be safe with hot things.</summary>
    public string HotThings => practical.Cooling is null
        ? "Tongs and mat every time. Nobody tests by touch. Hot things stay where they are."
        : "Tongs and mat every time. Nobody tests by touch: the page counts down to cool enough to weigh. Hot things stay where they are.";

    /// <summary>Behind what data are for those who were away: what they decide.</summary>
    public string WithDecisions => Repeats ? $", with a decision to take after each {Round}" : "";

    /// <summary>What is not done in a lesson without practical work.</summary>
    public string NothingDone => $"nothing is {(isDried ? "dried" : BurnsForHeating ? "heated" : HasFlame ? "lit" : "done")} or weighed";

    /// <summary>In a plan: how often every group does what is repeated.</summary>
    public string RoundsOfEveryGroup => isDried ? "Dryings of every group" : "Heatings of every group";

    /// <summary>Whether the flame is for heating in rounds, or the teacher's alone; elsewhere something burns of itself.</summary>
    private bool BurnsForHeating { get; } = practical.Kit.Any(k => k.Flame)
        && practical.Steps.Where(s => s.Kit.Keys.Any(held => practical.Kit.Any(k => k.Flame && k.Id == held))).ToArray() is var burning
        && (burning.Length == 0 || burning.Any(s => s.Place.Round != StepRound.None));
}
