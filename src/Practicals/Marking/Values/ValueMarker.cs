using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Words;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking.Values;

/// <summary>Says what a written value is: right, carried forward, rounded early, or wrong. docs/methods/marking.md has the rules.</summary>
/// <param name="sets">Molar masses by each set of atomic weights that students may use, the usual one first.</param>
internal sealed class ValueMarker(IReadOnlyList<Func<string, double>> sets)
{
    /// <summary>Written values so coarse that they would let nearly any answer follow from them are taken as they stand. Judgement.</summary>
    private const double WidestCarry = 0.10;

    /// <summary>The verdict on a number.</summary>
    /// <param name="value">What is asked for.</param>
    /// <param name="own">The student's numbers, earlier answers among them.</param>
    /// <param name="given">What was written, in the unit asked for.</param>
    /// <param name="isRight">Whether an earlier answer was found right, by id.</param>
    public Verdict Of(AskedValue value, OwnNumbers own, AnswerText.Number given, Func<string, bool> isRight)
    {
        // A ratio of 1 : 1 written without decimals would be right for nearly all readings: it has to be near as well.
        bool forced = given.IsCoarse && value.Answer.Unit == "1";
        double[] reached = [.. sets.Where(set => IsReached(given, own.Exact(value, set), own.Right(value, set), forced)).Select(set => own.Exact(value, set))];
        if (reached.Length > 0)
        {
            bool early = value.IsDifference ? given.Decimals < own.DecimalsOf(value.Expanded) : reached.All(exact => IsRoundedFar(given, exact));
            return early ? new Verdict.RoundedEarly() : new Verdict.Right();
        }

        // Two figures all the way, not all of it written: a right way that kept too few digits.
        bool twoFigures = !forced && given.Figures == 2 && value.Uses.Any(id => !own.HasWritten(id));
        bool follows = sets.Any(set => Follows(value, own, given, set, forced)
            || (twoFigures && ValueRange.About(given.Value, given.HalfWidth).Meets(own.Own(value, set, figures: 2))));
        string[] written = [.. own.WrittenBehind(value)];
        return !follows ? new Verdict.Wrong(null)
            : written.All(isRight) ? new Verdict.RoundedEarly()
            : Obstacle(value, own, written) is string reason ? new Verdict.Wrong(reason)
            : new Verdict.Carried();
    }

    /// <summary>Rounded to so few figures that half of the last place is a sizeable part of the value; a value that is written in full was not rounded.</summary>
    private static bool IsRoundedFar(AnswerText.Number given, double exact) =>
        given.HalfWidth > AnswerText.Coarse * Math.Abs(exact) && Math.Abs(given.Value - exact) > 1e-9 * Math.Abs(exact);

    private static bool IsReached(AnswerText.Number given, double exact, ValueRange right, bool forced) => forced
        ? IsNear(given, exact)
        : given.CouldBe(exact) || ValueRange.About(given.Value, given.HalfWidth).Meets(right);

    private static bool IsNear(AnswerText.Number given, double value) => Math.Abs(value - given.Value) <= AnswerText.Coarse * Math.Abs(value);

    private static bool Follows(AskedValue value, OwnNumbers own, AnswerText.Number given, Func<string, double> set, bool forced)
    {
        if (!forced && own.Own(value, set) is { IsKnown: true, RelativeWidth: <= WidestCarry } range)
        {
            return ValueRange.About(given.Value, given.HalfWidth).Meets(range);
        }

        double written = own.FromWritten(value, set);
        return forced ? IsNear(given, written) : given.CouldBe(written);
    }

    /// <summary>Why marks are not carried over a wrong earlier answer, or null. Common practice, no source.</summary>
    private static string? Obstacle(AskedValue value, OwnNumbers own, string[] written)
    {
        if (value.Answer.Carry == CarryPolicy.Never)
        {
            return MarkReasons.Texts.NeverCarried;
        }

        if (written.Any(id => own.AtHand(id) <= 0))
        {
            return MarkReasons.Texts.NothingOrLess;
        }

        // Two small numbers are also equal where both were rounded too far: that is another mistake.
        bool same = written.Length > 1 && written.All(own.IsFinelyWritten) && written.Select(own.AtHand).Distinct().Count() == 1
            && value.Answer.Formula is BinaryOperation { Operator: Operator.Divide };
        return same ? MarkReasons.Texts.TwoEqual : null;
    }
}
