using System.Text.Json.Serialization;

namespace Calx.Records.Storage;

/// <summary>Lists of texts as JSON, without reflection.</summary>
[JsonSerializable(typeof(string[]))]
internal sealed partial class TextJson : JsonSerializerContext;
