using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;

namespace Calx.Practicals.Marking;

/// <summary>One answer, marked.</summary>
/// <param name="Answer">What was asked for.</param>
/// <param name="Given">As written; empty for nothing.</param>
/// <param name="Verdict">What is said of it.</param>
/// <param name="ComputedMarks">Marks earned by the rules.</param>
public sealed record AnswerMark(AskedAnswer Answer, string Given, Verdict Verdict, int ComputedMarks)
{
    /// <summary>The value from the student's own readings, unrounded; null for a judgement and where the readings do not give it.</summary>
    public double? Expected { get; init; }

    /// <summary>What a judgement should have been, in words; null for a value and where that cannot be said.</summary>
    public string? ExpectedText { get; init; }

    /// <summary>The value from the student's own earlier answers as written; null where none was written or they give no value.</summary>
    public double? Own { get; init; }

    /// <summary>What is wrong with its figures.</summary>
    public FiguresFault Figures { get; init; }

    /// <summary>Whether another unit is written, or none where one was asked for.</summary>
    public bool HasWrongUnit { get; init; }

    /// <summary>What may lie behind a wrong answer; null for one that is not wrong.</summary>
    public IdeaFindings? Ideas { get; init; }

    /// <summary>The teacher's own marks for it, or null.</summary>
    public Overruling? Overruled { get; init; }

    /// <summary>Marks earned: the teacher's where there are some.</summary>
    public int Marks => Overruled?.Marks ?? ComputedMarks;

    /// <summary>Whether a person has to look at it: it could not be read or not be marked, and no own marks were given yet.</summary>
    public bool IsUnread => Overruled is null && Given.Length > 0 && Verdict is (Verdict.Unreadable or Verdict.CannotMark);

    /// <summary>Whether its marks were earned with an earlier answer that is wrong.</summary>
    public bool IsCarried => Verdict is Verdict.Carried;

    /// <summary>A sentence for the student; it tells no value.</summary>
    public string Feedback => Words.StudentFeedback.Of(this);

    /// <summary>Whether it was accepted, at once or carried.</summary>
    public bool IsAccepted => Verdict is Verdict.Right or Verdict.Carried or Verdict.RoundedEarly;
}
