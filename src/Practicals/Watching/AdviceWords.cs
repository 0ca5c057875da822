using System.Globalization;
using Calx.Practicals.Inference;

namespace Calx.Practicals.Watching;

/// <summary>The sentences of advice. Those for students have no digits, no causes, no accepted values.</summary>
internal static class AdviceWords
{
    public const string DecideFirst =
        "You have weighed after heating. Decide in your group: heat again or stop here? Say which of your weighings tell you.";

    public const string StopForStudents = "Stop, stand back and tell your teacher now. The weighings can wait.";

    public const string Reheat = "Heat once more, let it cool until the countdown ends, and weigh it again.";

    public const string Constant = "You can stop here: one more heating would change too little to matter.";

    public const string CoolAndReweigh = "Let it cool longer and weigh it again. Tongs and mat every time.";

    public const string CannotTell = "One step of your balance is too large to show whether heating again would change anything. Stop here and say so in your result.";

    public static string Stop(IReadOnlyList<string> noted) =>
        $"Noted: {string.Join("; ", noted)}. Go there now; that comes before all arithmetic, and local rules decide what follows.";

    public static string StopHere(NoMoreHeating why) => why switch
    {
        NoMoreHeating.NoTime => "There is no time for another heating: stop here. Say in your result how much may still be left at most.",
        NoMoreHeating.MostHeatings => "No further heating is planned: stop here. Say in your result how much may still be left at most.",
        _ => "Your teacher decides on any further heating: leave it where it is and ask.",
    };

    /// <summary>Why not again, and what the result then says.</summary>
    /// <param name="why">Why not again.</param>
    /// <param name="lastHeatingStartsBy">The call that has passed, where it has.</param>
    /// <param name="rule">What the last two weighings say.</param>
    public static string StopHereForTeacher(NoMoreHeating why, double? lastHeatingStartsBy, ConstantMass? rule)
    {
        string first = why switch
        {
            NoMoreHeating.NoTime => string.Create(
                CultureInfo.InvariantCulture, $"Another heating would be worth its minutes, but there is no time for it: last heating starts by minute {lastHeatingStartsBy:F0}."),
            NoMoreHeating.MostHeatings => "Another heating would be worth its minutes, but the practical plans none.",
            _ => "Another heating would be worth its minutes; in this practical only the teacher heats again.",
        };
        string second = rule?.UnreactedAtMost is double most
            ? string.Create(CultureInfo.InvariantCulture, $"Stop here: the result says that at most {100 * most:F0} % can still be unreacted (95 %).")
            : "Stop here: the weighings do not say how much can still be unreacted, and the result says that.";
        return $"{first} {second}";
    }
}
