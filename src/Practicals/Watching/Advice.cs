using Calx.Practicals.Inference.Deciding;

namespace Calx.Practicals.Watching;

/// <summary>What a group is to do now, in words for teacher and students apart. A closed set.</summary>
public abstract record Advice
{
    private readonly string decideFirst;

    private Advice(AdviceWords words, string word, string forTeacher, string? forStudents)
    {
        decideFirst = words.Texts.DecideFirst;
        Word = word;
        ForTeacher = forTeacher;
        AfterDeciding = forStudents;
    }

    /// <summary>The case in data: <c>reheat</c>, <c>stop-here</c>.</summary>
    public string Word { get; }

    /// <summary>What to do and why, with causes and digits: for the teacher only.</summary>
    public string ForTeacher { get; }

    /// <summary>What students read once they have decided, or null where there is nothing to read.</summary>
    private protected string? AfterDeciding { get; }

    /// <summary>What is probably going on in the group, or null where nothing was worked out.</summary>
    public GroupDiagnosis? Diagnosis { get; private protected init; }

    /// <summary>What the group's students may read now: never digits, causes or accepted values; null for nothing.</summary>
    /// <param name="assessed">Whether the lesson is assessed: then only what keeps people safe is said.</param>
    /// <param name="hasDecided">Whether the group has decided for itself, or the class is not asked to decide first.</param>
    public string? ForStudent(bool assessed, bool hasDecided) => Says(assessed, hasDecided);

    private protected virtual string? Says(bool assessed, bool hasDecided) =>
        assessed ? null : hasDecided ? AfterDeciding : decideFirst;

    /// <summary>Something was noted that comes before all arithmetic.</summary>
    public sealed record StopTellYourTeacher : Advice
    {
        internal StopTellYourTeacher(IReadOnlyList<string> noted, AdviceWords words)
            : base(words, "stop-tell-your-teacher", words.Stop(noted), words.StopForStudents) => Noted = noted;

        /// <summary>What was noted, in the practical's words.</summary>
        public IReadOnlyList<string> Noted { get; }

        private protected override string? Says(bool assessed, bool hasDecided) => AfterDeciding;
    }

    /// <summary>Heat once more, cool and weigh.</summary>
    public sealed record Reheat : Advice
    {
        internal Reheat(GroupDiagnosis diagnosis, AdviceWords words)
            : base(words, "reheat", diagnosis.ForTeacher, words.Texts.Reheat) => Diagnosis = diagnosis;
    }

    /// <summary>More heating is not worth its minutes.</summary>
    public sealed record ConstantMass : Advice
    {
        internal ConstantMass(GroupDiagnosis diagnosis, AdviceWords words)
            : base(words, "constant-mass", diagnosis.ForTeacher, words.Texts.Constant) => Diagnosis = diagnosis;
    }

    /// <summary>Another heating would be worth its minutes, but there is none: the result says how much can still be left.</summary>
    public sealed record StopHere : Advice
    {
        internal StopHere(GroupDiagnosis diagnosis, NoMoreHeating why, string forTeacher, AdviceWords words)
            : base(words, "stop-here", forTeacher, words.StopHere(why)) => (Diagnosis, Why) = (diagnosis, why);

        /// <summary>Why no heating follows.</summary>
        public NoMoreHeating Why { get; }
    }

    /// <summary>Let it cool and weigh it again.</summary>
    public sealed record CoolAndReweigh : Advice
    {
        internal CoolAndReweigh(GroupDiagnosis diagnosis, AdviceWords words)
            : base(words, "cool-and-reweigh", diagnosis.ForTeacher, words.Texts.CoolAndReweigh) => Diagnosis = diagnosis;
    }

    /// <summary>Look at a reading again before anything is worked out from it.</summary>
    public sealed record CheckReading : Advice
    {
        internal CheckReading(GroupDiagnosis diagnosis, string weighingId, AdviceWords words)
            : base(words, "check-reading", diagnosis.ForTeacher, diagnosis.ForStudent) => (Diagnosis, WeighingId) = (diagnosis, weighingId);

        /// <summary>Id of the weighing to look at.</summary>
        public string WeighingId { get; }

        /// <summary>Whether the reading cannot be.</summary>
        public bool CannotBe => Diagnosis?.Decision is Decision.Taken { CannotBe: true };

        private protected override string? Says(bool assessed, bool hasDecided) => assessed ? null : AfterDeciding;
    }

    /// <summary>The balance is too coarse for the change that is due.</summary>
    public sealed record CannotTell : Advice
    {
        internal CannotTell(GroupDiagnosis diagnosis, AdviceWords words)
            : base(words, "cannot-tell", diagnosis.ForTeacher, words.Texts.CannotTell) => Diagnosis = diagnosis;
    }

    /// <summary>There is nothing to decide now.</summary>
    public sealed record NotYet : Advice
    {
        internal NotYet(AdviceWords words, string why)
            : base(words, "not-yet", why, null)
        {
        }

        private protected override string? Says(bool assessed, bool hasDecided) => null;
    }
}
