using System.Security.Cryptography;

namespace Calx.App.Pages.Students;

/// <summary>The name under which a device's entries stand in the journal: drawn, so that it says nothing of whose it is.</summary>
public static class DeviceName
{
    private const string Digits = "0123456789abcdefghjkmnpqrstvwxyz";
    private const int Length = 8;

    /// <summary>A new name.</summary>
    public static string Draw() => "d-" + RandomNumberGenerator.GetString(Digits, Length);
}
