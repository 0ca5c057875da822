using System.Text.Json;
using Calx.App.Input;

namespace Calx.App.Live;

/// <summary>A plan as it is kept with a lesson: what was said of it, in the words of the command line's options.</summary>
public static class PlanSnapshot
{
    /// <summary>As JSON.</summary>
    public static string Text(PlanWords words) => JsonSerializer.Serialize(words, PlanSnapshotContext.Default.PlanWords);

    /// <summary>Reads it again.</summary>
    /// <exception cref="InvalidDataException">It is no such text.</exception>
    public static PlanWords Read(string json)
    {
        try
        {
            return JsonSerializer.Deserialize(json, PlanSnapshotContext.Default.PlanWords)
                ?? throw new InvalidDataException("The plan of this lesson is empty.");
        }
        catch (JsonException broken)
        {
            throw new InvalidDataException("The plan of this lesson cannot be read.", broken);
        }
    }
}
