using Calx.App.Learning;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings.History;

namespace Calx.App.Pages.Practicals;

/// <summary>What classes found with a practical, year by year.</summary>
/// <param name="Practical">The practical.</param>
/// <param name="Rows">The latest lesson first.</param>
/// <param name="Left">Lessons that are not shown: they could not be read, or are too many.</param>
/// <param name="History">Them all together.</param>
/// <param name="ShowsAccepted">Whether the accepted value is shown: the class sees the teacher's screen.</param>
public sealed record HistoryModel(Practical Practical, IReadOnlyList<HistoryRow> Rows, int Left, ResultHistory History, bool ShowsAccepted)
{
    /// <summary>How long steps took; null where nothing was timed.</summary>
    public HistoryTimes? Times { get; init; }

    /// <summary>The accepted numbers that hold for the school, or null.</summary>
    public AcceptedNumbers? Accepted { get; init; }

    /// <summary>The quantity on which classes are judged.</summary>
    public QuantityDefinition Key => Practical.Quantities.First(q => q.Id == Practical.Findings.Key);
}
