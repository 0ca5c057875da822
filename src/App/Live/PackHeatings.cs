using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Marking.Written;

namespace Calx.App.Live;

/// <summary>
/// The readings of a catch-up pack that its student used. The sheet goes on for as long as the student decides to heat again, and nobody
/// writes down when that ended: the answers say it. A student who stopped too early has decided wrongly, and may have worked rightly.
/// </summary>
public static class PackHeatings
{
    /// <summary>Readings up to the heating that most of the answers fit; the sensible one where several fit as well.</summary>
    /// <param name="pack">The pack.</param>
    /// <param name="answers">What was answered, by id.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> Readings(CatchUpPack pack, IReadOnlyDictionary<string, string> answers)
    {
        ArgumentNullException.ThrowIfNull(pack);
        int last = Used([.. pack.Answers.Select(a => new PackRange(a.Heating, a.Answer.Id, a.Low, a.High))], pack.Heatings, pack.SensibleHeatings, answers);
        return pack.Readings.Where(r => r.Weighing.Occurrence <= last).GroupBy(r => r.Weighing.Reading)
            .ToDictionary(g => g.Key, IReadOnlyList<WrittenNumber> (g) => [.. g.OrderBy(r => r.Weighing.Occurrence).Select(r => r.Displayed)], StringComparer.Ordinal);
    }

    /// <summary>After which heating a student probably stopped: that which most of the answers fit; the sensible one where several fit as well.</summary>
    /// <param name="ranges">What is accepted after each heating.</param>
    /// <param name="heatings">How many there are in the pack, from 1.</param>
    /// <param name="sensible">After which it was sensible to stop.</param>
    /// <param name="answers">What was answered, by id.</param>
    public static int Used(IReadOnlyList<PackRange> ranges, int heatings, int sensible, IReadOnlyDictionary<string, string> answers) => Enumerable.Range(1, heatings)
        .OrderByDescending(h => ranges.Count(r => r.Heating == h && Fits(r, answers.GetValueOrDefault(r.Answer))))
        .ThenBy(h => Math.Abs(h - sensible)).First();

    private static bool Fits(PackRange range, string? written) =>
        AnswerText.Read(written) is AnswerText.Number number && number.Value + number.HalfWidth >= range.Low && number.Value - number.HalfWidth <= range.High;
}
