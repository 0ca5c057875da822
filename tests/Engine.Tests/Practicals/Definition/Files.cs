using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>The shipped files, and what becomes of them when something in them is changed.</summary>
internal static class Files
{
    public const string Magnesium = "magnesium-oxide";

    public static string Text(string id) =>
        File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "practicals", id + ".yaml"));

    public static string Schema => File.ReadAllText(
        Path.Combine(AppContext.BaseDirectory, "practicals", "practical.schema.json"));

    /// <summary>The file with one text, which occurs in it, changed.</summary>
    public static string Changed(string id, string from, string to)
    {
        string text = Text(id);
        Assert.Contains(from, text, StringComparison.Ordinal);
        int at = text.IndexOf(from, StringComparison.Ordinal);
        return text[..at] + to + text[(at + from.Length)..];
    }

    /// <summary>Changes a file and says where its faults are: <c>line:column reason</c> each.</summary>
    public static IReadOnlyList<DefinitionFault> Faults(string id, string from, string to) =>
        PracticalReader.Read(Changed(id, from, to), "f.yaml").Faults;

    /// <summary>One change of a good file makes no practical of it, and a fault that is told where the marker stands.</summary>
    public static void AssertFault(string id, string from, string to, string marker, string reason)
    {
        string text = Changed(id, from, to);
        (int line, int column) = PlaceOf(text, marker);
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.Null(reading.Practical);
        Assert.Contains(
            reading.Faults,
            f => f.Line == line && f.Column == column && f.Reason.Contains(reason, StringComparison.Ordinal));
    }

    /// <summary>Line and column of a text that occurs in the changed file.</summary>
    public static (int Line, int Column) PlaceOf(string text, string marker)
    {
        int at = text.IndexOf(marker, StringComparison.Ordinal);
        Assert.True(at >= 0, $"'{marker}' is not in the file.");
        return (text[..at].Count(c => c == '\n') + 1, at - text.LastIndexOf('\n', at));
    }
}
