using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>What past lessons would change in a practical, before and after. A closed set.</summary>
public abstract record LearnedChange
{
    private LearnedChange(string id, string label, int lessons, string restsOn, string? sentence) =>
        (Id, Label, Lessons, RestsOn, Sentence) = (id, label, lessons, restsOn, sentence);

    /// <summary>By what it is accepted; unique among the changes of a practical.</summary>
    public string Id { get; }

    /// <summary>What changes, as the practical says it.</summary>
    public string Label { get; }

    /// <summary>How many lessons of the school it rests on.</summary>
    public int Lessons { get; }

    /// <summary>What it rests on, for people.</summary>
    public string RestsOn { get; }

    /// <summary>What a teacher is told: 'cool' took 14 min, not 10. Null where chance explains the difference, or it is too small to
    /// matter.</summary>
    public string? Sentence { get; }

    /// <summary>How long a step takes.</summary>
    public sealed record Time : LearnedChange
    {
        internal Time(LessonStep step, Timed timed, StepMinutes kept, string restsOn, string? sentence)
            : base(IdOf(step.Id), step.Label, timed.Lessons, restsOn, sentence)
        {
            (Step, Before, After) = (step.Id, step.Minutes, kept);
            (MeanInMinutes, OneGroupInMinutes, Times) = (timed.Mean, timed.OneGroup, timed.Times);
        }

        /// <summary>Id of the step.</summary>
        public string Step { get; }

        /// <summary>Times in min as the practical has them.</summary>
        public StepMinutes Before { get; }

        /// <summary>Times in min as past lessons would have them; of a hot vessel that cools, never shorter than the practical's.</summary>
        public StepMinutes After { get; }

        /// <summary>90 % interval of the mean time in min.</summary>
        public CoverageInterval MeanInMinutes { get; }

        /// <summary>90 % interval of one group's time in min in the next lesson.</summary>
        public CoverageInterval OneGroupInMinutes { get; }

        /// <summary>How many times of groups it rests on.</summary>
        public int Times { get; }

        internal static string IdOf(string step) => $"time:{step}";
    }

    /// <summary>How often something happens to a group, or to a piece of kit.</summary>
    public sealed record Rate : LearnedChange
    {
        internal Rate(string id, string label, string of, double before, Rated rated, (int Lessons, string RestsOn) from, string? sentence)
            : base(id, label, from.Lessons, from.RestsOn, sentence)
        {
            (Of, Before, After, Interval, NextLesson, Cases) = (of, before, rated.Rate, rated.Interval, rated.Count, rated.Tried);
            IsBreakage = id == IdOfKit(of);
        }

        /// <summary>The fault's cause, or the kit's id.</summary>
        public string Of { get; }

        /// <summary>Whether it is the breaking of a kit.</summary>
        public bool IsBreakage { get; }

        /// <summary>The share as the practical has it, 0 to 1.</summary>
        public double Before { get; }

        /// <summary>The share as past lessons would have it, 0 to 1.</summary>
        public double After { get; }

        /// <summary>90 % interval of the share.</summary>
        public CoverageInterval Interval { get; }

        /// <summary>90 % interval of how many groups it will happen to in the next lesson, or how many pieces break where as many are
        /// used as there are groups: whole numbers.</summary>
        public CoverageInterval NextLesson { get; }

        /// <summary>How many groups or pieces it rests on.</summary>
        public int Cases { get; }

        internal static string IdOfFault(string cause) => $"fault:{cause}";

        internal static string IdOfKit(string piece) => $"kit:{piece}";
    }
}
