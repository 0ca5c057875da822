namespace Calx.App.Pages.Marking;

/// <summary>The class view.</summary>
/// <param name="Marking">The answers.</param>
/// <param name="WithNames">Whether groups for the next lesson name their students: the class sees the teacher's screen.</param>
public sealed record ClassMarksModel(MarkingModel Marking, bool WithNames);
