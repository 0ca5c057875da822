using System.Text.Json.Serialization;

namespace Calx.App.Live;

/// <summary>What became of the entries of a request, in their order.</summary>
/// <param name="Results">One answer each.</param>
public sealed record EntryAnswers(IReadOnlyList<EntryAnswer> Results);

/// <summary>What became of one entry.</summary>
/// <param name="Id">Its id as sent, or null.</param>
/// <param name="Result">added, known (it was there already) or refused.</param>
/// <param name="Reason">Why it was refused, or null.</param>
/// <param name="Ask">What the person is asked about it once, or null.</param>
public sealed record EntryAnswer(string? Id, string Result, string? Reason, string? Ask);

/// <summary>Writes the answers without looking at types while running.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(EntryAnswers))]
public partial class EntryAnswersContext : JsonSerializerContext;
