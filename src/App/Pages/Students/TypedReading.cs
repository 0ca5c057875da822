namespace Calx.App.Pages.Students;

/// <summary>A reading sent by a page without script that is asked about before it is kept: its decimals are not those of its balance, or
/// the countdown still runs.</summary>
/// <param name="Group">The group.</param>
/// <param name="What">Id of the reading.</param>
/// <param name="Written">As written.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Offered">What it would be with the zeros that the display shows; as written where it has too many decimals.</param>
/// <param name="Balance">Letter of the balance.</param>
/// <param name="Vessel">Number of the vessel.</param>
public sealed record TypedReading(int Group, string What, string Written, string Question, string Offered, string Balance, string Vessel)
{
    /// <summary>Whether its decimals were confirmed: with this question's answer, or before.</summary>
    public bool Sure { get; init; }

    /// <summary>Whether the question is about the countdown that still runs.</summary>
    public bool IsHot { get; init; }

    /// <summary>Id of the entry that it corrects, or null.</summary>
    public string? Replaces { get; init; }

    /// <summary>Why, or null.</summary>
    public string? Reason { get; init; }
}
