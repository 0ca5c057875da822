namespace Calx.Practicals.Definition;

/// <summary>Something that a student answers and is marked on: a value, or a judgement.</summary>
public abstract class AskedAnswer
{
    private protected AskedAnswer(string id, string label, string unit, AnswerMarks marksFor, FilePosition at) =>
        (Id, Label, Unit, MarksFor, At) = (id, label, unit, marksFor, at);

    /// <summary>Its id, unique among all answers.</summary>
    public string Id { get; }

    /// <summary>Its name for people.</summary>
    public string Label { get; }

    /// <summary>Its unit; <c>1</c> for a ratio, empty for a judgement.</summary>
    public string Unit { get; }

    /// <summary>Marks for it, from 1.</summary>
    public int Marks => MarksFor.Total;

    /// <summary>What the marks are for.</summary>
    public AnswerMarks MarksFor { get; }

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; }
}
