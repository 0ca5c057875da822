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

                (string Name, double Probability)[] open = Open();
                string chance = Percent(best.Probability);
                return best.Probability switch
                {
                    _ when open.Length == 1 => $"The masses single out {best.Formula} (probability {chance}).",
                    >= 0.8 => $"The masses favour {best.Formula} ({chance}) but leave open {Listed(open[1..])}.",
                    _ => $"The masses do not decide between {Listed(open)}.",
                };
            }
        }

        private FormulaCandidate Nearest => Candidates.MinBy(found => found.ChiSquared)!;

        /// <summary>The fewest answers, 'none of these' among them, that hold 95 % together.</summary>
        private (string Name, double Probability)[] Open()
        {
            double held = 0;
            return [.. Candidates.Select(found => (Name: found.Formula, found.Probability))
                .Append((Name: "none of these", Probability: NoneOfThese))
                .OrderByDescending(answer => answer.Probability)
                .TakeWhile(answer =>
                {
                    bool wanted = held < 0.95;
                    held += answer.Probability;
                    return wanted;
                })];
        }

        private static string Listed((string Name, double Probability)[] open)
        {
            const int most = 4;
            string named = string.Join(", ", open.Take(most).Select(answer => $"{answer.Name} ({Percent(answer.Probability)})"));
            int left = open.Length - most;
            return left <= 0 ? named : string.Create(CultureInfo.InvariantCulture, $"{named} and {left} more");
        }

        private static string Percent(double probability) => probability switch
        {
            >= 0.995 => "over 99 %",
            < 0.005 => "under 1 %",
            _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:0} %"),
        };
    }

    /// <summary>No formula follows from these masses.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record Undetermined(string Reason) : FormulaRanking;
}
