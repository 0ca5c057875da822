using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Nodes;
using Calx.Records.Archive;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;
using Json.Schema;

namespace Calx.Records.Tests.Archive;

/// <summary>What another tool may rely on: docs/schemas/archive.schema.json.</summary>
public sealed class ArchiveSchemaTests(SqlitePlace place) : IClassFixture<SqlitePlace>
{
    // The library registers a schema once in a process.
    private static readonly JsonSchema Schema = JsonSchema.FromFile(Path.Combine(AppContext.BaseDirectory, "archive.schema.json"));

    [Fact]
    public async Task An_export_with_a_record_of_every_kind_has_the_published_shape()
    {
        JsonNode records = await Export();
        Assert.Equal("", Faults(records));
        Assert.All((string[])["classes", "members", "balances", "checks", "signatures", "numbers", "lessons"], kind => Assert.NotEmpty(records[kind]!.AsArray()));
        Assert.Equal(Sample.OfEachKind().Length, records["lessons"]![0]!["journal"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("value", "1,5")]
    [InlineData("id", "30.10")]
    [InlineData("kind", "guess")]
    [InlineData("reason", "no entry is replaced")]
    [InlineData("typedAt", "yesterday")]
    [InlineData("unit", null)]
    public async Task An_entry_with_a_slip_has_not(string part, string? slip)
    {
        JsonNode records = await Export();
        records["lessons"]![0]!["journal"]![0]![part] = slip;
        Assert.NotEqual("", Faults(records));
    }

    private async Task<JsonNode> Export()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        await Sample.Done(store.Decide([new NumberDecision("magnesium-oxide", 1, "", "kit:lid", "0.08", "0.05", "40 pieces in four lessons", 4, "LM", Sample.Noon)], Sample.By, Sample.Cancel));
        using var bytes = new MemoryStream();
        await LessonArchive.WriteAll(store, bytes, null, Sample.Cancel);
        using var zip = new ZipArchive(bytes);
        await using Stream records = await zip.GetEntry("records.json")!.OpenAsync(Sample.Cancel);
        return (await JsonNode.ParseAsync(records, cancellationToken: Sample.Cancel))!;
    }

    private static string Faults(JsonNode records)
    {
        using JsonDocument document = JsonDocument.Parse(records.ToJsonString());
        EvaluationResults results = Schema.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid ? "" : string.Join('\n', (results.Details ?? [])
            .Where(d => d.Errors is { Count: > 0 }).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").DefaultIfEmpty("not valid"));
    }
}
