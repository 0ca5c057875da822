using Calx.App.Live;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.App.Pages.Answers;

/// <summary>The readings that a student's answers follow from, as the page shows them.</summary>
public static class OwnReadings
{
    /// <summary>Those that there are, in the order of the sheet.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readings">As written, by id, in the order in which they were taken.</param>
    public static IReadOnlyList<OwnReading> Of(Practical practical, IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(readings);
        return
        [
            .. practical.Readings.Where(r => readings.ContainsKey(r.Id)).SelectMany(r => readings[r.Id]
                .Select((written, i) => new OwnReading(ReadingNames.Of(practical, r.Id, i + 1), $"{written}\u00a0{r.Unit}"))),
        ];
    }

    /// <summary>The points of mass against time from which a curve is drawn, by their times; none where the practical takes none.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="series">The points, the first and the last among them; null for none.</param>
    public static IReadOnlyList<OwnReading> PointsOf(Practical practical, GroupSeries? series)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return practical.Series is not SeriesDefinition of || series is null ? []
            : [.. series.Points.Select(p => new OwnReading($"{p.Time}\u00a0{of.TimeUnit}", $"{p.Value}\u00a0g"))];
    }

    /// <summary>Names of those readings that the values asked for need and that are not there. It is not said which value needs which.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="readings">The readings that there are, by id.</param>
    public static IReadOnlyList<string> Missing(LessonView view, IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> readings)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(readings);
        HashSet<string> asked = [.. AnswerQuestions.Of(view).Select(q => q.Id)];
        HashSet<string> needed = [.. view.Practical.AllAnswers.OfType<AnswerDefinition>().Where(a => asked.Contains(a.Id)).SelectMany(a => AnswerReach.ReadingsOf(a, view.Practical))];
        return [.. view.Weighings.Where(w => w.Occurrence == 1 && needed.Contains(w.Reading.Id) && !readings.ContainsKey(w.Reading.Id)).Select(w => Lower(w.Reading.Label))];
    }

    /// <summary>A capital at the beginning becomes small, unless it is a symbol's.</summary>
    private static string Lower(string label) => label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;
}
