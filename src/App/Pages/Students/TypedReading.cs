namespace Calx.App.Pages.Students;

/// <summary>A reading sent by a page without script, whose decimals are not those of its balance: it is asked about before it is
/// kept.</summary>
/// <param name="Group">The group.</param>
/// <param name="What">Id of the reading.</param>
/// <param name="Written">As written.</param>
/// <param name="Question">What is asked.</param>
/// <param name="Offered">What it would be with the zeros that the display shows; as written where it has too many decimals.</param>
/// <param name="Balance">Letter of the balance.</param>
/// <param name="Vessel">Number of the vessel.</param>
public sealed record TypedReading(int Group, string What, string Written, string Question, string Offered, string Balance, string Vessel);
