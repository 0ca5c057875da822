using Calx.Practicals.Readings;

namespace Calx.Practicals.CatchUp;

/// <summary>A student's data as they were drawn, before anything is worked out from them.</summary>
/// <param name="Readings">The weighings in order.</param>
/// <param name="Truth">What went wrong.</param>
/// <param name="Series">Mass against time; null where the practical takes none.</param>
internal sealed record DrawnPack(IReadOnlyList<PackReading> Readings, PackTruth Truth, GroupSeries? Series = null)
{
    /// <summary>What a student sees, for telling packs apart.</summary>
    public string Shown => ShownBy(Readings);

    /// <summary>The same of readings from elsewhere.</summary>
    public static string ShownBy(IEnumerable<PackReading> readings) => string.Join(' ', readings.Select(r => $"{r.Weighing.Id}={r.Displayed}"));
}
