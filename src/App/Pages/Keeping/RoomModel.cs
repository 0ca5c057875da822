namespace Calx.App.Pages.Keeping;

/// <summary>How the room reaches this program.</summary>
/// <param name="OpenToRoom">Whether other devices may.</param>
/// <param name="Secure">Whether it speaks HTTPS.</param>
/// <param name="Port">The port that it listens on.</param>
/// <param name="Hello">Addresses for a phone to try, the likeliest first.</param>
/// <param name="Reached">Devices that got through.</param>
/// <param name="HasPassphrase">Whether a passphrase is set.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
/// <param name="Done">What was done, or null.</param>
public sealed record RoomModel(
    bool OpenToRoom, bool Secure, int Port, IReadOnlyList<string> Hello, IReadOnlyList<Reached> Reached, bool HasPassphrase, string? Fault, string? Done);
