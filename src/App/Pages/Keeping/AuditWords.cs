using System.Text.Json;

namespace Calx.App.Pages.Keeping;

/// <summary>A line of the audit for people: names and values, long ones cut.</summary>
public static class AuditWords
{
    private const int Longest = 60;

    /// <summary>Names and values of a JSON object; none of null. What is no object is one value without a name.</summary>
    public static IReadOnlyList<(string Name, string Value)> Of(string? json)
    {
        if (json is null)
        {
            return [];
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            return document.RootElement.ValueKind == JsonValueKind.Object
                ? [.. document.RootElement.EnumerateObject().Select(p => (p.Name, Short(p.Value.ToString())))]
                : [("value", Short(document.RootElement.ToString()))];
        }
        catch (JsonException)
        {
            return [("value", Short(json))];
        }
    }

    private static string Short(string text) => text.Length <= Longest ? text : text[..Longest] + "...";
}
