namespace Calx.Practicals.Definition;

/// <summary>What the marks of an answer are for. <c>default</c> is no mark.</summary>
/// <param name="Method">For a value that follows from what the student had, earlier mistakes carried forward.</param>
/// <param name="Accuracy">For the value that the own readings give; not carried.</param>
/// <param name="Unit">For the unit.</param>
/// <param name="Figures">For the figures.</param>
public readonly record struct AnswerMarks(int Method, int Accuracy, int Unit, int Figures)
{
    /// <summary>All of them.</summary>
    public int Total => Method + Accuracy + Unit + Figures;
}
