using Calx.Records.Storage;

namespace Calx.App.Pages;

/// <summary>What became of a change of the records, for a page.</summary>
public static class Changes
{
    /// <summary>Why it was not made, or null where it was.</summary>
    public static string? Fault(this ChangeResult result) => (result as ChangeResult.Refused)?.Reason;

    /// <summary>An address with a sentence to be shown there.</summary>
    /// <param name="address">The address, with or without a query.</param>
    /// <param name="kind"><c>fault</c> or <c>done</c>.</param>
    /// <param name="sentence">The sentence.</param>
    public static string Saying(string address, string kind, string sentence)
    {
        string[] parts = address.Split('#', 2);
        char joint = parts[0].Contains('?', StringComparison.Ordinal) ? '&' : '?';
        return $"{parts[0]}{joint}{kind}={Uri.EscapeDataString(sentence)}{(parts.Length > 1 ? "#" + parts[1] : "")}";
    }
}
