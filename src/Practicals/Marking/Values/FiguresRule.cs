using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking.Values;

/// <summary>What is wrong with the figures of an answer.</summary>
public enum FiguresFault
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Fewer than the readings give.</summary>
    TooFew,

    /// <summary>Far more than the readings can give.</summary>
    TooMany,
}

/// <summary>
/// How many figures an answer may have. A sum or difference keeps the decimals of its readings; all else has at least two figures and
/// at most two more than its least certain reading gives. Common practice, no source.
/// </summary>
internal static class FiguresRule
{
    /// <summary>Fewest figures of a product or quotient; a ratio of small masses has no more to give.</summary>
    private const int Least = 2;

    /// <summary>Figures beyond those of the readings that are let pass: values on the way are written with more.</summary>
    private const int More = 2;

    /// <summary>Judges an answer.</summary>
    /// <param name="isDifference">Whether it is made of readings by adding and taking away alone.</param>
    /// <param name="readingDecimals">Decimals of the readings it rests on, of the coarsest.</param>
    /// <param name="readingFigures">Figures that the readings leave for it: of its least certain difference.</param>
    /// <param name="given">As written.</param>
    public static FiguresFault Of(bool isDifference, int readingDecimals, int readingFigures, AnswerText.Number given)
    {
        if (given.Form == AnswerForm.Fraction)
        {
            return FiguresFault.None;
        }

        if (isDifference)
        {
            return given.Decimals is not int decimals || decimals == readingDecimals ? FiguresFault.None
                : decimals < readingDecimals ? FiguresFault.TooFew : FiguresFault.TooMany;
        }

        int least = Math.Min(Least, Math.Max(1, readingFigures));
        // A power of ten, or a zero in front, says nothing of a whole number's last zeros: 100 may have three figures.
        return given.Figures < least ? FiguresFault.TooFew : given.Decimals != 0 && given.Figures > Math.Max(readingFigures, Least) + More ? FiguresFault.TooMany : FiguresFault.None;
    }
}
