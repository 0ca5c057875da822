using System.Globalization;

namespace Calx.Chemistry.Amounts;

/// <summary>What masses say about a formula of small whole numbers.</summary>
public abstract record FormulaRanking
{
    private FormulaRanking()
    {
    }

    /// <summary>The formulas considered, the most probable first, with what is left for none of them.</summary>
    /// <param name="Candidates">All formulas considered; their probabilities and <paramref name="NoneOfThese"/> add up
    /// to 1.</param>
    /// <param name="NoneOfThese">Probability that no formula considered is right.</param>
    public sealed record Ranked(IReadOnlyList<FormulaCandidate> Candidates, double NoneOfThese) : FormulaRanking
    {
        /// <summary>The fewest candidates that hold this probability together; all where they do not reach it.</summary>
        /// <param name="probability">0 to 1.</param>
        public IReadOnlyList<FormulaCandidate> Likeliest(double probability = 0.95)
        {
            double held = 0;
            int count = 0;
            while (count < Candidates.Count && held < probability)
            {
                held += Candidates[count].Probability;
                count++;
            }

            return [.. Candidates.Take(count)];
        }

        /// <summary>One sentence for a teacher: what the masses decide, and what they leave open.</summary>
        public string Conclusion
        {
            get
            {
                FormulaCandidate best = Candidates[0];
                if (NoneOfThese > best.Probability)
                {
                    return $"The masses fit no formula considered well; the nearest is {Nearest.Formula}.";
                }

                IReadOnlyList<FormulaCandidate> likely = Likeliest();
                return likely.Count == 1
                    ? $"The masses single out {best.Formula} (probability {Percent(best)})."
                    : $"The masses do not decide between {Listed(likely)}.";
            }
        }

        private FormulaCandidate Nearest => Candidates.MinBy(found => found.ChiSquared)!;

        private static string Listed(IReadOnlyList<FormulaCandidate> likely)
        {
            const int most = 4;
            string named = string.Join(", ", likely.Take(most).Select(found => $"{found.Formula} ({Percent(found)})"));
            int left = likely.Count - most;
            return left <= 0 ? named : string.Create(CultureInfo.InvariantCulture, $"{named} and {left} more");
        }

        private static string Percent(FormulaCandidate found) =>
            found.Probability >= 0.995 ? "over 99 %" : string.Create(CultureInfo.InvariantCulture, $"{100 * found.Probability:0} %");
    }

    /// <summary>No formula follows from these masses.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record Undetermined(string Reason) : FormulaRanking;
}
