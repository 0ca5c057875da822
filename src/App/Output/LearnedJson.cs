using System.Text.Json;
using Calx.App.Learning;

namespace Calx.App.Output;

/// <summary>The learned numbers that a plan or a simulation took, within its JSON document.</summary>
internal static class LearnedJson
{
    /// <summary>Writes them under <c>learned</c>, or another name; null where the file's own stand.</summary>
    public static void Write(Utf8JsonWriter json, AcceptedNumbers? learned, string name = "learned")
    {
        if (learned is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteNumber("lessons", learned.Lessons);
        json.WriteString("acceptedOn", learned.AcceptedOn.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        json.WriteString("class", learned.Class.Length == 0 ? null : learned.Class);
        json.WriteStartObject("times");
        foreach ((string step, IReadOnlyList<double> minutes) in learned.Times)
        {
            json.WriteStartArray(step);
            foreach (double time in minutes)
            {
                json.WriteNumberValue(time);
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
        Shares(json, "rates", learned.Rates);
        Shares(json, "breakages", learned.Breaks);
        json.WriteEndObject();
    }

    private static void Shares(Utf8JsonWriter json, string name, IReadOnlyDictionary<string, double> shares)
    {
        json.WriteStartObject(name);
        foreach ((string of, double share) in shares)
        {
            json.WriteFigure(of, share);
        }

        json.WriteEndObject();
    }
}
