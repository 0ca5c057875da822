using System.Text.Json.Serialization;
using Calx.App.Input;

namespace Calx.App.Live;

/// <summary>Reads and writes it without looking at types while running, which starts faster.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase)]
[JsonSerializable(typeof(PlanWords))]
public partial class PlanSnapshotContext : JsonSerializerContext;
