using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition;

/// <summary>A judgement that a student makes from the own readings and values: no number, and marked all the same. The cases are here,
/// and no others.</summary>
public abstract class JudgementAnswer : AskedAnswer
{
    private JudgementAnswer(string id, string label, string ask, int marks, FilePosition at)
        : base(id, label, string.Empty, new AnswerMarks(marks, 0, 0, 0), at) => Ask = ask;

    /// <summary>The question.</summary>
    public string Ask { get; }

    /// <summary>Which formula has the compound?</summary>
    public sealed class OfFormula(
        string id, string label, string ask, int marks, AnswerDefinition ratio, Formula first, Formula second, Formula accepted, int simple, FilePosition at)
        : JudgementAnswer(id, label, ask, marks, at)
    {
        /// <summary>The value that it follows from: moles of the first for each mole of the second.</summary>
        public AnswerDefinition Ratio { get; } = ratio;

        /// <summary>The element counted first.</summary>
        public Formula First { get; } = first;

        /// <summary>The element counted second.</summary>
        public Formula Second { get; } = second;

        /// <summary>The accepted formula.</summary>
        public Formula Accepted { get; } = accepted;

        /// <summary>The largest whole number that a school's readings can tell from its neighbours, from 1. Judgement.</summary>
        public int Simple { get; } = simple;
    }

    /// <summary>Was the reaction complete, or not, or can nobody tell?</summary>
    public sealed class OfCompleteness(string id, string label, string ask, int marks, ConstantMassDefinition? rule, FilePosition at)
        : JudgementAnswer(id, label, ask, marks, at)
    {
        /// <summary>When two weighings count as the same. A practical that is used has one: its file was checked for it.</summary>
        public ConstantMassDefinition? Rule { get; } = rule;
    }

    /// <summary>Which group's result is odd?</summary>
    public sealed class OfOddGroup(string id, string label, string ask, int marks, FilePosition at) : JudgementAnswer(id, label, ask, marks, at);

    /// <summary>Which cause fits the side on which the own value lies?</summary>
    public sealed class OfCause(string id, string label, string ask, int marks, AnswerDefinition value, FilePosition at)
        : JudgementAnswer(id, label, ask, marks, at)
    {
        /// <summary>The value that is explained.</summary>
        public AnswerDefinition Value { get; } = value;
    }

    /// <summary>Which change of the method fits the cause?</summary>
    public sealed class OfImprovement(string id, string label, string ask, int marks, OfCause cause, FilePosition at)
        : JudgementAnswer(id, label, ask, marks, at)
    {
        /// <summary>The judgement that names the cause.</summary>
        public OfCause Cause { get; } = cause;
    }
}
