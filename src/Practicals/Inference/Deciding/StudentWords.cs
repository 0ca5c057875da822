using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>
/// Two sentences for the student: a question that leads to the cause without naming it, and what to think or do next. No
/// digits, no probabilities, no accepted value, nothing to touch or smell.
/// </summary>
internal static class StudentWords
{
    private const string Open = "Compare your last two weighings with what you expected. What could have made them so, and what could you do to find out?";

    private static readonly Dictionary<string, string> Questions = new()
    {
        ["not-all-reacted"] = "How could you find out whether everything that can change has changed? What would one more heating and weighing show if it had not?",
        ["product-lost"] = "Is everything that was made still in the crucible? Think back to what you saw while it was heated, and which way it would move your last mass.",
        ["side-reaction"] = "Could more than one thing have happened to your substance? Think of everything that it was in contact with while it was hot.",
        ["tarnished-sample"] = "Was everything that you weighed in the substance on the label? Look again at how it looked before you weighed it.",
        ["damp-vessel"] = "Was there anything in or on the empty crucible that heating could drive away? Think which of your weighings it would change.",
        ["not-dry"] = "Was everything dry when you weighed it last? Think how you could tell from one more weighing.",
        ["overheated"] = "Did the substance look as it should at the end? Think what strong heating could do to it beyond what you wanted.",
        ["regained-water"] = "Can the air change a substance while it cools? Think how long yours stood before it was weighed.",
        ["weighed-warm"] = "How long had the flame been out when you weighed? Think what warm air above a pan does to a balance.",
        ["zero-shifted"] = "Were all your weighings made on one balance, and did it show zero each time? Think which differences that would change.",
        ["spilled"] = "Did everything get from one vessel into the other? Think which way it would move your last mass.",
        ["extra-mass"] = "Is there anything on the crucible that was not there at first? Look at the outside once it is cold.",
    };

    /// <summary>Says it.</summary>
    public static string Of(CausePosterior posterior, Decision decision)
    {
        switch (decision)
        {
            case Decision.Taken { Verdict: Verdict.StopTellYourTeacher }:
                return "Stop, stand back and tell your teacher now. The weighings can wait.";
            case Decision.Taken { Verdict: Verdict.CheckReading }:
                return Decimals(posterior);
            case Decision.Taken { Verdict: Verdict.CannotTell }:
                return "How large is the change that you are looking for beside one step of your balance? What would you need to see it better?";
            case Decision.Taken { Verdict: Verdict.CoolAndReweigh }:
                return Questions["weighed-warm"];
            case Decision.Taken { Verdict: Verdict.Reheat }:
                return Questions["not-all-reacted"];
            default:
                break;
        }

        CauseProbability first = posterior.Causes[0];
        return first.Cause == Causes.AsExpected
            ? "How do your weighings show whether anything more would happen on heating? Say how sure you can be with this balance."
            : first.Probability >= 0.5 ? Questions.GetValueOrDefault(first.Cause, Open) : Open;
    }

    private static string Decimals(CausePosterior posterior)
    {
        int decimals = posterior.Problem.Rows.Where(r => r.IsReading).Select(r => r.DivisionInGrams).DefaultIfEmpty(0.01)
            .Max(d => Math.Max(0, (int)Math.Ceiling(-Math.Log10(d) - 1e-9)));
        return $"Your balance shows {DecimalsInWords.Of(decimals)}. Look again and type all you see.";
    }
}
