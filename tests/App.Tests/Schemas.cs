using System.Collections.Concurrent;
using System.Text.Json;
using Json.Schema;

namespace Calx.App.Tests;

/// <summary>Holds documents to the shapes in docs/schemas.</summary>
internal static class Schemas
{
    // The library registers a schema once in a process, so each is loaded once.
    private static readonly ConcurrentDictionary<string, Lazy<JsonSchema>> Loaded = new(StringComparer.Ordinal);

    /// <summary>Parses a document and holds it to a schema; the name is that of the file without <c>.schema.json</c>.
    /// </summary>
    public static JsonElement Check(string name, string document)
    {
        using JsonDocument parsed = JsonDocument.Parse(document);
        JsonElement root = parsed.RootElement.Clone();
        EvaluationResults results = Loaded.GetOrAdd(name, Load).Value.Evaluate(root, new EvaluationOptions { OutputFormat = OutputFormat.List });
        string faults = string.Join('\n', (results.Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}"));
        Assert.True(results.IsValid, $"{name}: {faults}\n{document}");
        return root;
    }

    private static Lazy<JsonSchema> Load(string name) => new(() => JsonSchema.FromFile(
        Path.Combine(AppContext.BaseDirectory, "schemas", $"{name}.schema.json")));
}
