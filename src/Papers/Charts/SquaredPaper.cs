using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Charts;

/// <summary>Squared paper with two axes, for a curve of mass against time.</summary>
internal static class SquaredPaper
{
    private const double UnitsInMillimetre = 5;
    private const double SquareInMillimetres = 5;
    private const double Left = 60;
    private const double Top = 24;
    private const double Below = 48;

    /// <summary>Draws it.</summary>
    /// <param name="series">The series, whose last time fits.</param>
    /// <param name="width">In mm.</param>
    /// <param name="height">In mm.</param>
    /// <param name="numbered">Whether times are written along the bottom.</param>
    /// <param name="language">The language of the axes' names.</param>
    public static SvgPicture Picture(SeriesDefinition series, double width, double height, bool numbered, PaperLanguage language)
    {
        ChartTexts texts = new(language);
        double square = SquareInMillimetres * UnitsInMillimetre;
        (double w, double h) = (width * UnitsInMillimetre, height * UnitsInMillimetre);
        var picture = new SvgPicture("squared-paper", w, h, texts.SquaredPaper, texts.SquaredPaper);
        int across = (int)((w - Left - 12) / square);
        int upwards = (int)((h - Top - Below) / square);
        (double right, double bottom) = (Left + (across * square), Top + (upwards * square));
        for (int i = 0; i <= across; i++)
        {
            picture.Line(Left + (i * square), Top, Left + (i * square), bottom, "grid");
        }

        for (int i = 0; i <= upwards; i++)
        {
            picture.Line(Left, Top + (i * square), right, Top + (i * square), "grid");
        }

        picture.Line(Left, Top, Left, bottom, "axis");
        picture.Line(Left, bottom, right, bottom, "axis");
        picture.Text(6, Top - 8, texts.QuantityUnit(series.Label, "g"), "axis-name");
        picture.Text(right, bottom + 42, texts.QuantityUnit(texts.Time, series.TimeUnit), "axis-name", "end");
        if (numbered)
        {
            Times(picture, series, across, square, bottom);
        }

        return picture;
    }

    /// <summary>As many squares a step as fit, so that the last time is still on the paper.</summary>
    private static void Times(SvgPicture picture, SeriesDefinition series, int across, double square, double bottom)
    {
        double until = series.UntilInMinutes / series.MinutesInUnit;
        double step = new Axis([0, until], 0, 1, steps: 10).Step;
        int squares = Math.Max(1, (int)(across / Math.Ceiling(until / step)));
        for (int i = 0; i * step <= until + (step / 2) && i * squares <= across; i++)
        {
            picture.Text(Left + (i * squares * square), bottom + 20, series.TimeText(i * step * series.MinutesInUnit), "tick", "middle");
        }
    }
}
