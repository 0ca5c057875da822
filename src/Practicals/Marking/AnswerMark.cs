using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;

namespace Calx.Practicals.Marking;

/// <summary>One answer, marked.</summary>
/// <param name="Answer">What was asked for.</param>
/// <param name="Given">As written; empty for nothing.</param>
/// <param name="Verdict">What is said of it.</param>
/// <param name="Expected">The value from the student's own readings, unrounded; null where the readings do not give it.</param>
/// <param name="Own">The value from the student's own earlier answers as written; null where none was written or they give no value.</param>
/// <param name="Marks">Marks earned.</param>
/// <param name="Figures">What is wrong with its figures.</param>
/// <param name="HasWrongUnit">Whether another unit is written, or none where one was asked for.</param>
/// <param name="Ideas">What may lie behind a wrong value; null for one that is not wrong.</param>
public sealed record AnswerMark(
    AnswerDefinition Answer,
    string Given,
    Verdict Verdict,
    double? Expected,
    double? Own,
    int Marks,
    FiguresFault Figures,
    bool HasWrongUnit,
    IdeaFindings? Ideas)
{
    /// <summary>Whether its marks were earned with an earlier answer that is wrong.</summary>
    public bool IsCarried => Verdict is Verdict.Carried;

    /// <summary>A sentence for the student; it tells no value.</summary>
    public string Feedback => Words.StudentFeedback.Of(this);

    /// <summary>Whether its value was accepted, at once or carried.</summary>
    public bool IsAccepted => Verdict is Verdict.Right or Verdict.Carried or Verdict.RoundedEarly;
}
