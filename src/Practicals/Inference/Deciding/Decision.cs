namespace Calx.Practicals.Inference.Deciding;

/// <summary>What a group is to do now, and why. A closed set.</summary>
public abstract record Decision
{
    private Decision(string why) => Why = why;

    /// <summary>The reason, one or two sentences for the teacher.</summary>
    public string Why { get; }

    /// <summary>A decision was reached.</summary>
    public sealed record Taken : Decision
    {
        /// <summary>Takes a decision.</summary>
        /// <param name="verdict">What to do.</param>
        /// <param name="probabilitySpoiled">Probability that the key quantity would still move by more than matters, 0 to
        /// 1.</param>
        /// <param name="rule">What the trade's rule says of the last two weighings; null where the practical has no such
        /// rule.</param>
        /// <param name="why">The reason, and where verdict and rule differ, why; for the teacher.</param>
        /// <param name="reading">Id of the weighing to look at again, or null.</param>
        /// <param name="probableDigits">What the balance more probably showed, for the teacher only; or null.</param>
        public Taken(
            Verdict verdict,
            double probabilitySpoiled,
            ConstantMass? rule,
            string why,
            string? reading = null,
            string? probableDigits = null)
            : base(why)
        {
            Verdict = verdict;
            ProbabilitySpoiled = probabilitySpoiled;
            Rule = rule;
            Reading = reading;
            ProbableDigits = probableDigits;
        }

        /// <summary>Whether the reading to look at cannot be: nothing that goes wrong on the bench gives it beside the others, so that only
        /// a slip of the pen is left.</summary>
        public bool CannotBe { get; internal init; }

        /// <summary>What to do.</summary>
        public Verdict Verdict { get; }

        /// <summary>The verdict's word in data: <c>reheat</c>, <c>stop-tell-your-teacher</c>.</summary>
        public string Word => Verdict switch
        {
            Verdict.Reheat => "reheat",
            Verdict.ConstantMass => "constant-mass",
            Verdict.CoolAndReweigh => "cool-and-reweigh",
            Verdict.CheckReading => "check-reading",
            Verdict.CannotTell => "cannot-tell",
            _ => "stop-tell-your-teacher",
        };

        /// <summary>Probability that the key quantity would still move by more than matters.</summary>
        public double ProbabilitySpoiled { get; }

        /// <summary>What the trade's rule says of the last two weighings, or null.</summary>
        public ConstantMass? Rule { get; }

        /// <summary>Id of the weighing to look at again, or null.</summary>
        public string? Reading { get; }

        /// <summary>What the balance more probably showed, for the teacher only; or null.</summary>
        public string? ProbableDigits { get; }
    }

    /// <summary>There is nothing to decide yet.</summary>
    public sealed record NotYet : Decision
    {
        /// <summary>Takes the reason.</summary>
        /// <param name="why">One sentence for the teacher.</param>
        public NotYet(string why)
            : base(why)
        {
        }
    }
}
