using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>An answer that a student works out and is marked on.</summary>
public sealed class AnswerDefinition(
    string id, string label, string unit, Expression formula, AnswerMarks marksFor, CarryPolicy carry, FilePosition at)
{
    /// <summary>Its id, unique among the answers; later answers may use it.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit; <c>1</c> for a ratio.</summary>
    public string Unit { get; } = unit;

    /// <summary>How it follows from the student's own readings, earlier answers and molar masses.</summary>
    public Expression Formula { get; } = formula;

    /// <summary>Marks for it, from 1.</summary>
    public int Marks => MarksFor.Total;

    /// <summary>What the marks are for.</summary>
    public AnswerMarks MarksFor { get; } = marksFor;

    /// <summary>Whether an earlier mistake is carried into it.</summary>
    public CarryPolicy Carry { get; } = carry;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
