using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A value that a student works out and is marked on.</summary>
public sealed class AnswerDefinition(
    string id, string label, string unit, Expression formula, AnswerMarks marksFor, CarryPolicy carry, FilePosition at)
    : AskedAnswer(id, label, unit, marksFor, at)
{
    /// <summary>How it follows from the student's own readings, earlier answers and molar masses. Later answers may use it by its id.</summary>
    public Expression Formula { get; } = formula;

    /// <summary>Whether an earlier mistake is carried into it.</summary>
    public CarryPolicy Carry { get; } = carry;
}
