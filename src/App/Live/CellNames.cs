using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.App.Live;

/// <summary>What a cell of the table is called: a reading of the sheet, or a point of mass against time.</summary>
public static class CellNames
{
    /// <summary>Its name, as 'Mass after reheating' or 'Mass at 0.5 min'.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="what">Its id.</param>
    public static string Of(Practical practical, string what)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return practical.Series is SeriesDefinition series && series.TimesInMinutes.FirstOrDefault(t => series.PointId(t) == what) is double minutes and > 0
            ? $"{series.Label} at {series.TimeText(minutes)} {series.TimeUnit}" : ReadingNames.OfId(practical, what);
    }
}
