using System.Text.Json;
using Calx.Practicals.Inference;

namespace Calx.App.Output;

/// <summary>What a table of readings determines, in the one shape that plan and analyse share.</summary>
internal static class IdentifiabilityJson
{
    /// <summary>Writes the two lists; both are empty where nothing was asked of the table.</summary>
    public static void Write(Utf8JsonWriter json, Identifiability? identifiability)
    {
        json.WriteTexts("identifiable", identifiability?.Determined.Select(q => q.Id) ?? []);
        json.WriteStartArray("notIdentifiable");
        foreach (MissingReadings missing in identifiability?.Undetermined ?? [])
        {
            json.WriteStartObject();
            json.WriteString("quantity", missing.Quantity.Id);
            json.WriteString("missing", string.Join(", ", missing.Readings.Select(r => r.Id)));
            json.WriteTexts("missingReadings", missing.Readings.Select(r => r.Id));
            json.WriteString("why", missing.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
