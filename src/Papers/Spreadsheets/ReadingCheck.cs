using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Readings;

namespace Calx.Papers.Spreadsheets;

/// <summary>What a written reading is held to: a number above 0 with no more decimals than the balance shows. It warns and never refuses:
/// what was read must be written, whatever it is. Functions that spreadsheets share, and no names of functions that one of them lacks.</summary>
internal static class ReadingCheck
{
    /// <summary>True for a reading as expected.</summary>
    /// <param name="cell">The first cell of the range, without dollar signs.</param>
    /// <param name="isMass">Whether it was weighed; of another reading only a number is asked.</param>
    public static string Passes(string cell, bool isMass) => isMass
        ? $"IF(ISNUMBER({cell}),AND({cell}>0,ABS({cell}-ROUND({cell},{ConstantsSheet.DecimalsName}))<0.000000001),FALSE)"
        : $"ISNUMBER({cell})";

    /// <summary>True for something written that is not as expected.</summary>
    public static string Fails(string cell, bool isMass) => $"IF({cell}=\"\",FALSE,NOT({Passes(cell, isMass)}))";

    /// <summary>Format of a reading: the balance's decimals, and those behind them that somebody wrote all the same. A format without
    /// them would hide digits, and who reads the table would take what is shown.</summary>
    /// <param name="decimals">Decimals of the balance.</param>
    public static string? Format(int decimals) => decimals == 0 ? null : $"0.{new string('0', decimals)}####";

    /// <summary>What is to be written, in a sentence.</summary>
    public static string Sentence(ResultsLesson lesson) =>
        lesson.Texts.YellowCells(Sentences.Or([.. lesson.Decimals.Select(d => DecimalsInWords.Of(d, lesson.Setting.Language.Engine))], lesson.Setting.Language));
}
