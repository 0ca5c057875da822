using Calx.App.Live;
using Calx.App.Pages.Students;

namespace Calx.App.Pages.Live;

/// <summary>All readings of a lesson, to type in.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Fault">What was not taken, or null.</param>
/// <param name="Balances">The lesson's balances.</param>
public sealed record GridModel(LessonView View, string? Fault, IReadOnlyList<BalanceChoice> Balances)
{
    /// <summary>What was typed into fields, by their names, and is asked about before it is kept.</summary>
    public IReadOnlyDictionary<string, string> Asked { get; init; } = new Dictionary<string, string>();

    /// <summary>The only group that is typed for, or null for all.</summary>
    public int? Only { get; init; }

    /// <summary>The reason that was given, or null.</summary>
    public string? Reason { get; init; }
}
