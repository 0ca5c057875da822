using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Papers.Charts;

/// <summary>The amounts that matter, as lines up through the chart with their names on top: the planned one, the smallest that
/// is sure enough, and the best.</summary>
internal sealed class AmountMarks
{
    private readonly IReadOnlyList<(double Grams, string Text, string Role)> marks;

    private AmountMarks(IReadOnlyList<(double, string, string)> marks) => this.marks = marks;

    /// <summary>Room that the names need over the plot.</summary>
    public double Height => (marks.Count * Flags.LevelHeight) + 14;

    /// <summary>The marks by rising amount; names of the same amount share a mark.</summary>
    public static AmountMarks Of(AmountAdvice amounts, PaperLanguage language)
    {
        ChartTexts texts = new(language);
        (double? Grams, string Role, string Name)[] all =
        [
            (amounts.Planned.SampleInGrams, "planned", texts.PlannedMark), (amounts.Smallest?.SampleInGrams, "smallest", texts.SmallestMark),
            (amounts.Best?.SampleInGrams, "best", texts.BestMark),
        ];
        return new AmountMarks([.. all.Where(m => m.Grams is not null).GroupBy(m => Math.Round(m.Grams!.Value, 9)).OrderBy(g => g.Key).Select(g => Joined(g, language))]);
    }

    /// <summary>Draws them; those further left stand higher, so that no line goes through another's name.</summary>
    public void Draw(SvgPicture picture, Frame frame, Axis across, double width)
    {
        double[] poles = [.. marks.Select(m => across.At(m.Grams))];
        int[] levels = Flags.Levels(poles, [.. marks.Select(m => TextWidth.Of(m.Text))]);
        for (int i = 0; i < marks.Count; i++)
        {
            double y = frame.Top - 8 - (levels[i] * Flags.LevelHeight);
            picture.Line(poles[i], y - 11, poles[i], frame.Bottom, marks[i].Role);
            picture.Text(poles[i] + Flags.Beside + 1, y, TextWidth.Cut(marks[i].Text, width - poles[i] - Flags.Beside), $"{marks[i].Role}-label");
        }
    }

    private static (double Grams, string Text, string Role) Joined(IGrouping<double, (double? Grams, string Role, string Name)> same, PaperLanguage language)
    {
        SharedTexts shared = new(language);
        string names = same.Select(m => m.Name).Aggregate(shared.And);
        return (same.Key, new ChartTexts(language).AmountMark(names, same.Key.ToString("0.######", CultureInfo.InvariantCulture)), same.First().Role);
    }
}
