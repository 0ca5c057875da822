using System.Text.Json;

namespace Calx.Rehearsal;

/// <summary>An entry as a page sends it.</summary>
/// <param name="Id">Its id: 32 hexadecimal digits.</param>
/// <param name="What">The weighing, observation or happening.</param>
/// <param name="Written">A reading as written, or null.</param>
/// <param name="Kind">reading, observation, note or happening.</param>
/// <param name="Text">The text of a note or happening, or null.</param>
public sealed record TypedEntry(string Id, string What, string? Written, string Kind = "reading", string? Text = null)
{
    /// <summary>A reading of magnesium's crucible, its id and digits drawn from a stream.</summary>
    public static TypedEntry Drawn(Random random)
    {
        ArgumentNullException.ThrowIfNull(random);
        string written = FormattableString.Invariant($"{random.Next(2000, 4000) / 100m:0.00}");
        string what = Weighings[random.Next(Weighings.Length)];
        return new TypedEntry(DrawnId(random), what, written);
    }

    /// <summary>An id from a stream.</summary>
    public static string DrawnId(Random random)
    {
        ArgumentNullException.ThrowIfNull(random);
        byte[] bytes = new byte[16];
        random.NextBytes(bytes);
        bytes[0] |= 1;
        return Convert.ToHexStringLower(bytes);
    }

    /// <summary>What a request with entries holds.</summary>
    public static byte[] Body(IEnumerable<TypedEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(entries);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteStartArray("entries");
            foreach (TypedEntry entry in entries)
            {
                entry.Write(json);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return stream.ToArray();
    }

    private static readonly string[] Weighings = ["empty", "before", "after"];

    private void Write(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("id", Id);
        json.WriteString("kind", Kind);
        json.WriteString("what", What);
        json.WriteNumber("trial", 1);
        if (Written is not null)
        {
            json.WriteString("written", Written);
            json.WriteString("balance", "A");
        }

        if (Text is not null)
        {
            json.WriteString("text", Text);
        }

        json.WriteString("typedAt", "2026-11-25T10:15:00Z");
        json.WriteEndObject();
    }
}
