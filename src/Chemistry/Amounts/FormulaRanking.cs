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
    }

    /// <summary>No formula follows from these masses.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record Undetermined(string Reason) : FormulaRanking;
}
