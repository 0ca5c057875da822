namespace Calx.App.Pages.Students;

/// <summary>A reading that a group sees as sent.</summary>
/// <param name="Label">What it is, with its unit: quantity / unit.</param>
/// <param name="Written">As written.</param>
/// <param name="Where">Balance and vessel in words, or empty.</param>
/// <param name="Before">What it replaced, the oldest first, each with the reason; empty where nothing.</param>
/// <param name="Beside">Other readings typed for the same place that nobody has decided on.</param>
public sealed record SentReading(
    string Label, string Written, string Where, IReadOnlyList<string> Before, IReadOnlyList<string> Beside)
{
    /// <summary>Whether those beside came from the very device that sent the one that counts.</summary>
    public bool IsOwnBeside { get; init; }
}
