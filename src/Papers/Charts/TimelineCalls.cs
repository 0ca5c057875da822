using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;

namespace Calx.Papers.Charts;

/// <summary>The minutes that a teacher calls out: last heating, gas off, the bell; each a line through all rows, named
/// under the axis.</summary>
internal sealed class TimelineCalls
{
    /// <summary>From the axis down to the names, past the numbers of the minutes.</summary>
    private const double BelowAxis = 44;

    private readonly Call[] calls;

    private TimelineCalls(Call[] calls) => this.calls = calls;

    private sealed record Call(double X, string Text, string Role, int Level);

    /// <summary>Room that they and the numbers need under the axis.</summary>
    public double Height => BelowAxis + (calls.Max(c => c.Level) * Flags.LevelHeight) + 8;

    /// <summary>The calls of a lesson.</summary>
    public static TimelineCalls Of(LessonForecast lesson, MinuteAxis axis, ChartTexts texts)
    {
        double bell = lesson.Settings.Minutes;
        double gasOff = lesson.Settings.Practical.Classroom.GasOffInMinutes;
        (double Minute, Func<string, string> Text, string Role)[] all =
        [
            (lesson.Calls.Heating ?? 0, texts.LastHeating, "last-heating"),
            (gasOff > 0 ? bell - gasOff : 0, texts.GasOff, "gas-off"),
            (bell, texts.Bell, "bell"),
        ];
        (double Minute, Func<string, string> Text, string Role)[] shown = [.. all.Where(c => c.Minute > 0).OrderBy(c => c.Minute)];
        double[] poles = [.. shown.Select(c => axis.At(c.Minute))];
        string[] said = [.. shown.Select(c => c.Text(c.Minute.ToString("0.#", CultureInfo.InvariantCulture)))];
        int[] levels = Flags.Levels(poles, [.. said.Select(t => TextWidth.Of(t))]);
        return new TimelineCalls([.. shown.Select((c, i) => new Call(poles[i], said[i], c.Role, levels[i]))]);
    }

    /// <summary>Draws the lines, from the top of the rows to their names, past the numbers of the minutes. The bell's is
    /// double.</summary>
    public void DrawLines(SvgPicture picture, double top, double bottom)
    {
        foreach (Call call in calls)
        {
            Line(picture, call, top, bottom + 6);
            Line(picture, call, bottom + 25, YOf(call, bottom) + 2);
        }
    }

    /// <summary>Writes their names.</summary>
    public void WriteNames(SvgPicture picture, double bottom)
    {
        foreach (Call call in calls)
        {
            picture.Text(call.X + Flags.Beside + 1, YOf(call, bottom), call.Text, $"{call.Role}-label");
        }
    }

    private static void Line(SvgPicture picture, Call call, double from, double to)
    {
        picture.Line(call.X, from, call.X, to, call.Role);
        if (call.Role == "bell")
        {
            picture.Line(call.X, from, call.X, to, "bell-core");
        }
    }

    private static double YOf(Call call, double bottom) => bottom + BelowAxis + (call.Level * Flags.LevelHeight);
}
