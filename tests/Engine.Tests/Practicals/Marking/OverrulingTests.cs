using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>The teacher's own marks, and answers in words.</summary>
public class OverrulingTests
{
    private static readonly StudentWork Ada = Given.Of(
        "Ada", null, "30.00 30.24 30.38", "massMagnesium", "0.24", "massOxygen", "0.41", "what-happened", "It rose by 0.14 g. Oxygen joined it.", "better", "");

    [Fact]
    public void Marks_by_the_teacher_count_and_the_computed_ones_stay_beside_them()
    {
        MarkedWork marked = Given.Marker().Mark([Ada], [new Overruling("Ada", "massOxygen", 1, "a slip of the pen, shown on paper")]).Works[0];
        AnswerMark mark = marked.Answers.Single(a => a.Answer.Id == "massOxygen");

        Assert.Equal((1, 0), (mark.Marks, mark.ComputedMarks));
        Assert.Equal("a slip of the pen, shown on paper", mark.Overruled!.Reason);
        Assert.IsType<Verdict.Wrong>(mark.Verdict);
        Assert.Equal(2, marked.Total);
    }

    [Fact]
    public void A_student_is_not_sent_back_to_an_answer_that_the_teacher_accepted_or_told_that_a_lowered_one_is_right()
    {
        MarkedWork before = Given.Marker().Mark([Ada]).Works[0];
        MarkedWork after = Given.Marker().Mark([Ada], [new Overruling("Ada", "massOxygen", 1, ""), new Overruling("Ada", "massMagnesium", 0, "copied")]).Works[0];

        Assert.Contains("Look again at ‘mass of oxygen’", before.Feedback, StringComparison.Ordinal);
        Assert.DoesNotContain("Look again", after.Feedback, StringComparison.Ordinal);
        Assert.DoesNotContain("mass of magnesium", after.Feedback, StringComparison.Ordinal);
        Assert.Contains("mass of oxygen", after.Feedback, StringComparison.Ordinal);
        Assert.All(after.Answers.Take(2), a => Assert.Contains("by your teacher", a.Feedback, StringComparison.Ordinal));
    }

    [Fact]
    public void They_are_kept_when_a_class_is_marked_again_more_strictly_and_the_last_counts()
    {
        Overruling[] given = [new("Ada", "massOxygen", 0, "first thought"), new("Ada", "massOxygen", 1, "second thought")];
        var strict = new Marker(Given.Magnesium, new MarkingPolicy(EarlyRounding.OneMarkOff, 1, 1, UnitsAsked: true), [Calx.Chemistry.Elements.AtomicWeights.Iupac2024]);

        Assert.Equal(1, strict.Mark([Ada], given).Works[0].Answers.Single(a => a.Answer.Id == "massOxygen").Marks);
        Assert.Equal("second thought", Given.Marker().Mark([Ada], given).Works[0].Answers.Single(a => a.Answer.Id == "massOxygen").Overruled!.Reason);
    }

    [Fact]
    public void What_fits_nothing_is_named_and_the_rest_is_used()
    {
        MarkedClass marked = Given.Marker().Mark(
            [Ada], [new("Bea", "massOxygen", 1, ""), new("Ada", "colour", 1, ""), new("Ada", "massOxygen", 7, ""), new("Ada", "massOxygen", -1, ""), new("Ada", "massMagnesium", 0, "copied")]);

        Assert.Equal(4, marked.LeftOverrulings.Count);
        Assert.Contains("'Bea'", marked.LeftOverrulings[0].Reason, StringComparison.Ordinal);
        Assert.Contains("'colour'", marked.LeftOverrulings[1].Reason, StringComparison.Ordinal);
        Assert.Contains("worth 1", marked.LeftOverrulings[2].Reason, StringComparison.Ordinal);
        Assert.Equal(0, marked.Works[0].Total);
    }

    [Theory]
    [InlineData("massOxygen")]
    [InlineData("Mass of oxygen")]
    public void An_answer_may_be_called_by_its_id_or_its_name(string name) =>
        Assert.Equal(2, Given.Marker().Mark([Ada], [new Overruling("Ada", name, 1, "")]).Works[0].Total);

    [Theory]
    [InlineData("what-happened")]
    [InlineData("Question 1")]
    [InlineData("What happened to the mass when the magnesium burnt, and by how much? Say why.")]
    public void A_question_may_be_called_by_its_id_its_number_or_its_words(string name) =>
        Assert.Equal(2, Given.Marker().Mark([Ada], [new Overruling("Ada", name, 2, "")]).Works[0].Prose.Single(p => p.Question.Id == "what-happened").Marks);

    [Fact]
    public void What_cannot_be_read_waits_for_the_teacher_until_there_are_marks()
    {
        StudentWork work = Given.Work("30.00 30.24 30.38", "massMagnesium", "a quarter of a gram or so", "cause", "the moon");
        MarkedClass before = Given.Marker(["massMagnesium", "cause"]).Mark([work]);

        Assert.Equal((2, false), (before.Works[0].Unread, before.Works[0].IsFinal));
        Assert.Equal((1, 1), (before.Questions[0].Answered, before.Questions[0].Unread));
        Assert.True(Given.Marker(["massMagnesium", "cause"]).Mark([work], [new Overruling("14", "massMagnesium", 1, ""), new Overruling("14", "cause", 0, "")]).Works[0].IsFinal);
    }

    [Fact]
    public void Words_wait_for_the_teacher_and_nothing_written_earns_nothing()
    {
        MarkedWork marked = Given.Marker(["massMagnesium", "what-happened", "better"]).Mark([Ada]).Works[0];

        Assert.Equal(["what-happened", "better"], marked.Prose.Select(p => p.Question.Id));
        Assert.True(marked.Prose[0].IsWaiting);
        Assert.Equal(0, marked.Prose[1].Marks);
        // A mark for the value, and two points are expected in each of the two answers.
        Assert.Equal((1, 5, 1), (marked.Total, marked.Of, marked.Waiting));

        ProseMark given = Given.Marker().Mark([Ada], [new Overruling("Ada", "what-happened", 2, "Well said.")]).Works[0].Prose.Single(p => p.Question.Id == "what-happened");
        Assert.Equal((2, "Well said.", false), (given.Marks, given.Comment, given.IsWaiting));
    }
}
