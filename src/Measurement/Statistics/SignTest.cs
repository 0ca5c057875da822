using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Did most go up, or down? The exact sign test: of the differences that are not 0, the number above 0 is binomial with
/// chance ½ when rise and fall are equally likely. It assumes nothing of sizes and so needs many groups to say much.
/// </summary>
public sealed class SignTest
{
    private SignTest(int rises, int falls, int ties)
    {
        Rises = rises;
        Falls = falls;
        Ties = ties;
    }

    /// <summary>How many differences are above 0.</summary>
    public int Rises { get; }

    /// <summary>How many are below 0.</summary>
    public int Falls { get; }

    /// <summary>How many are 0; they are left out, and many of them are themselves a finding.</summary>
    public int Ties { get; }

    /// <summary>The chance of so many rises or more if rise and fall were equally likely.</summary>
    public double ProbabilityOfSoManyRises => AtLeast(Rises);

    /// <summary>The chance of so many falls or more if rise and fall were equally likely.</summary>
    public double ProbabilityOfSoManyFalls => AtLeast(Falls);

    /// <summary>The chance of so uneven a split or more, either way.</summary>
    public double TwoSidedProbability => Math.Min(1, 2 * AtLeast(Math.Max(Rises, Falls)));

    /// <summary>Tests differences, such as each group's mass after less its mass before.</summary>
    /// <exception cref="ArgumentException">No differences, or one not finite.</exception>
    public static SignTestResult Of(ReadOnlySpan<double> differences)
    {
        Require.Finite(differences, 1);
        int rises = 0;
        int falls = 0;
        foreach (double difference in differences)
        {
            rises += difference > 0 ? 1 : 0;
            falls += difference < 0 ? 1 : 0;
        }

        return rises + falls == 0
            ? new SignTestResult.NotTested("every difference is 0")
            : new SignTestResult.Tested(new SignTest(rises, falls, differences.Length - rises - falls));
    }

    // P(X ≥ k) of a binomial with chance ½ is a regularised incomplete beta function of ½.
    private double AtLeast(int successes) =>
        successes == 0 ? 1 : BetaFunction.RegularizedIncomplete(successes, Rises + Falls - successes + 1, 0.5);
}

/// <summary>Whether the sign test could be made.</summary>
public abstract record SignTestResult
{
    private SignTestResult()
    {
    }

    /// <summary>It could.</summary>
    public sealed record Tested : SignTestResult
    {
        internal Tested(SignTest test) => Test = test;

        /// <summary>The counts and their chances.</summary>
        public SignTest Test { get; }
    }

    /// <summary>It could not.</summary>
    public sealed record NotTested : SignTestResult
    {
        internal NotTested(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
