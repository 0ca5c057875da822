using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Practicals.Planning.Words;

/// <summary>What is to be said of a plan's amounts, a sentence each.</summary>
internal static class AmountWords
{
    /// <summary>A bias is worth a sentence from here on, and when it is more than the class's own scatter.</summary>
    private const double BiasThatCounts = 0.03;

    /// <summary>So many groups that see nothing move are worth saying before anything else.</summary>
    private const double OpenThatCounts = 0.1;

    /// <summary>A coarse balance is worth a sentence where leaving it out gains so much, of one group and of the class together.</summary>
    private const double SpoiltThatCounts = 0.05;

    /// <summary>A class less sure than one group by so much is worth a sentence.</summary>
    private const double LessThatCounts = 0.01;

    /// <summary>Where even the best amount leads hardly anywhere, it is not named as if it did.</summary>
    private const double WorthNaming = 0.3;

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        foreach (ConclusionDefinition conclusion in plan.Undecidable)
        {
            string quantity = conclusion.Test!.Quantity;
            string why = plan.Identifiability.Undetermined.First(m => m.Quantity.Id == quantity).Why;
            yield return $"The class cannot conclude that {conclusion.Label}. {why}";
        }

        AmountPoint planned = plan.Amounts.Planned;
        if (planned.Chances.Count == 0)
        {
            yield break;
        }

        yield return Verdict(plan, planned);
        yield return Range(plan);
        if (MoreCosts(plan) is string more)
        {
            yield return more;
        }

        if (CoarseBalance(plan, planned) is string coarse)
        {
            yield return coarse;
        }

        if (FewGroups(plan, planned) is string few)
        {
            yield return few;
        }

        if (Scatter(plan, planned) is string scatter)
        {
            yield return scatter;
        }
    }

    private static string Verdict(Plan plan, AmountPoint planned)
    {
        string sample = Grams(planned.SampleInGrams);
        string who = plan.Settings.Groups == 1 ? "one group" : string.Create(CultureInfo.InvariantCulture, $"a class of {plan.Settings.Groups} groups");
        bool sure = planned.ClassRight >= AmountAdvice.Sure && planned.ClassWrong <= AmountAdvice.Astray;
        ConclusionChance worst = planned.Chances.OrderBy(c => c.ClassRight.Value).ThenBy(c => c.GroupRight.Value).First();
        if (sure)
        {
            return plan.Undecidable.Count > 0
                ? $"For the rest {sample} is enough: {who} comes to the conclusion that {worst.Conclusion.Label} {Odds.Times(planned.ClassRight)}."
                : $"{sample} is enough: {who} comes to every conclusion, {Odds.Times(planned.ClassRight)} even to the hardest, that {worst.Conclusion.Label}.";
        }

        string wrong = planned.ClassWrong > AmountAdvice.Astray ? $", and {Odds.Times(planned.ClassWrong)} to a wrong one" : "";
        string little = planned.SampleInGrams < plan.Amounts.Smallest?.SampleInGrams ? "too little" : "not enough";
        string alone = Alone(planned.Chances.FirstOrDefault(c => c.Conclusion.Test is ConclusionTest.Moves && Open(c) >= OpenThatCounts) ?? worst);
        return $"{sample} is {little}: with {Balances(plan)} {alone}; {who} comes to the hardest conclusion, that {worst.Conclusion.Label}, {Odds.Times(worst.ClassRight.Value)}{wrong}.";
    }

    /// <summary>Where one kind of balance spoils what the others could show.</summary>
    private static string? CoarseBalance(Plan plan, AmountPoint planned)
    {
        if (plan.Amounts.Changes.FirstOrDefault(c => c.Id == AmountSearch.FinestOnly) is not AmountChange only
            || only.Then.ClassRight + only.Then.GroupRight < planned.ClassRight + planned.GroupRight + SpoiltThatCounts)
        {
            return null;
        }

        double coarsest = plan.Settings.Balances.Max(b => b.ResolutionInGrams);
        int given = plan.Settings.Balances.Count(b => b.ResolutionInGrams == coarsest);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{given} balance{(given == 1 ? "" : "s")} in {plan.Settings.Balances.Count} shows only {coarsest} g, and groups are given the balances in turn: with {only.Label} one group comes to the hardest conclusion {Odds.Times(only.Then.GroupRight)} (now {Odds.Times(planned.GroupRight)}), the class {Odds.Times(only.Then.ClassRight)} (now {Odds.Times(planned.ClassRight)}). Leave the coarse one in the cupboard.");
    }

    /// <summary>Why a few groups together may say less than one of them: the sign test asks for nearly all to agree.</summary>
    private static string? FewGroups(Plan plan, AmountPoint planned)
    {
        ConclusionChance? less = planned.Chances.FirstOrDefault(c =>
            c.Conclusion.Test is ConclusionTest.Moves && c.ClassRight.Value < c.GroupRight.Value - LessThatCounts);
        return less is null || plan.Settings.Groups == 1 ? null : string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.Settings.Groups} groups are few for a sign test: hardly one of them may go astray, so the class comes to '{less.Conclusion.Label}' {Odds.Times(less.ClassRight.Value)}, one group {Odds.Times(less.GroupRight.Value)}.");
    }

    /// <summary>What one group sees, as it would tell it.</summary>
    private static string Alone(ConclusionChance chance)
    {
        double open = Open(chance);
        string said = chance.Conclusion.Test switch
        {
            ConclusionTest.Moves { Up: true } => $"{Odds.Of(open, "group", "groups")} would see no gain",
            ConclusionTest.Moves => $"{Odds.Of(open, "group", "groups")} would see no loss",
            _ => $"{Odds.Of(open, "group", "groups")} alone could not say whether {chance.Conclusion.Label}",
        };
        return said + (chance.GroupWrong.Value >= 0.02 ? $", and {Odds.Of(chance.GroupWrong.Value, "group", "groups")} would say something else" : "");
    }

    private static double Open(ConclusionChance chance) => 1 - chance.GroupRight.Value - chance.GroupWrong.Value;

    private static string Range(Plan plan)
    {
        AmountAdvice amounts = plan.Amounts;
        string largest = Grams(amounts.LargestInGrams);
        if (amounts.Curve.Count == 0)
        {
            return "The practical's file does not say which amounts may be tried.";
        }

        if (amounts.Smallest is not AmountPoint smallest)
        {
            string best = amounts.Best!.ClassRight >= WorthNaming ? $"; the best is {Grams(amounts.Best.SampleInGrams)}" : "";
            return $"No amount up to {largest}, the most that a class may use, makes the class sure enough of every conclusion{best}.";
        }

        return amounts.Best is AmountPoint more && more.SampleInGrams > smallest.SampleInGrams
            ? $"From {Grams(smallest.SampleInGrams)} the class is sure enough; more than {Grams(more.SampleInGrams)} hardly helps, and more than {largest} no class may use."
            : $"From {Grams(smallest.SampleInGrams)} the class is sure enough, and more hardly helps; more than {largest} no class may use.";
    }

    /// <summary>What the largest amount costs against the plan's: time, and faults that come oftener.</summary>
    private static string? MoreCosts(Plan plan)
    {
        PlanSettings settings = plan.Settings;
        double largest = plan.Amounts.LargestInGrams;
        if (settings.Practical.Amounts is not AmountsDefinition amounts || settings.SampleInGrams >= largest)
        {
            return null;
        }

        double relative = largest / settings.SampleInGrams;
        var usual = new Circumstances(settings.Practical, settings.AllConditions);
        Circumstances now = usual.ForSample(settings.SampleInGrams);
        Circumstances then = usual.ForSample(largest);
        string[] costs =
        [
            .. settings.Practical.Steps.Where(s => s.Place.Grows > 0 && settings.IsInLesson(s)).Select(s => string.Create(
                CultureInfo.InvariantCulture, $"'{s.Label}' takes {100 * (Math.Pow(relative, s.Place.Grows) - 1):F0} % longer")),
            .. Enumerable.Range(0, settings.Practical.Faults.Count).Where(f => amounts.Grows.ContainsKey(settings.Practical.Faults[f].Cause)).Select(f => string.Create(
                CultureInfo.InvariantCulture, $"'{settings.Practical.Faults[f].Label}' happens in {100 * then.RateOf(f):F0} groups in 100 instead of {100 * now.RateOf(f):F0}")),
        ];
        return costs.Length == 0 ? null : $"With {Grams(largest)}, {string.Join(", ", costs)} (judgement).";
    }

    private static string? Scatter(Plan plan, AmountPoint planned)
    {
        QuantityDefinition key = plan.Settings.Practical.Quantities.First(q => q.Id == plan.Settings.Practical.Findings.Key);
        if (planned.GroupSpread is not double group)
        {
            return null;
        }

        string one = string.Create(CultureInfo.InvariantCulture, $"Groups' values of '{key.Label}' will scatter by {100 * group:F0} %");
        if (planned is not { ClassSpread: double all, ClassBias: double bias })
        {
            return one + ".";
        }

        string sentence = string.Create(CultureInfo.InvariantCulture, $"{one}, classes' by {100 * all:F1} %");
        return Math.Abs(bias) > Math.Max(BiasThatCounts, all)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{sentence}, about a value {100 * Math.Abs(bias):F0} % {(bias < 0 ? "below" : "above")} the accepted one: averaging does not remove that.")
            : sentence + ".";
    }

    private static string Balances(Plan plan) => plan.Settings.Balances.Count == 1 ? "this balance" : "these balances";

    private static string Grams(double grams) => string.Create(CultureInfo.InvariantCulture, $"{grams:0.######} g");
}
