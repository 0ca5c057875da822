namespace Calx.Practicals.Definition;

/// <summary>A question that is answered in words.</summary>
public sealed class SheetQuestion(
    string id, string ask, QuestionTopic topic, IReadOnlyList<string> expected, IReadOnlyList<string> needs, int rounds, int lines, FilePosition at)
{
    /// <summary>Its id, unique among the questions.</summary>
    public string Id { get; } = id;

    /// <summary>The question.</summary>
    public string Ask { get; } = ask;

    /// <summary>What it is about.</summary>
    public QuestionTopic Topic { get; } = topic;

    /// <summary>What is expected, a mark each.</summary>
    public IReadOnlyList<string> Expected { get; } = expected;

    /// <summary>Ids of the readings without which it cannot be answered.</summary>
    public IReadOnlyList<string> Needs { get; } = needs;

    /// <summary>The weighing of a repeated reading without which it cannot be answered, 2 for the second; 1 where the first will do.</summary>
    public int Rounds { get; } = rounds;

    /// <summary>Lines to write on, from 1.</summary>
    public int Lines { get; } = lines;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
