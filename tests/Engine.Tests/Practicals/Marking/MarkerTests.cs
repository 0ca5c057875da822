using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Values;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Marks of hand-made work on 30.00, 30.24, 30.38 g; values worked out by hand with Mg 24.3, O 16.0. The rules are common practice, no source.</summary>
public class MarkerTests
{
    [Fact]
    public void Work_that_follows_from_the_own_readings_earns_all_marks()
    {
        MarkedWork marked = Mark(["0.24", "0.14", "0.00988", "0.00875", "1.13"]);

        Assert.All(marked.Answers, a => Assert.IsType<Verdict.Right>(a.Verdict));
        Assert.Equal((5, 5), (marked.Total, marked.Of));
    }

    [Theory]
    [InlineData("0.24 g", "0,14", "9.88e-3", "8.75 x 10^-3 mol", "1.13:1")]
    [InlineData("240 mg", "0.14 g", "9.88 mmol", "7/800", "1 : 0.886")]
    [InlineData("0.24", "0.14", "0.0100", "0.00875", "Mg : O = 1.14 : 1")] // Atomic weight 24 from a table of whole numbers.
    [InlineData("0.24", "0.14", "0.00988", "0.00875", "O : Mg = 0.886")]
    [InlineData("0.24", "0.14", "", "", "1.13")] // Nothing on the way is written down.
    [InlineData("0.24", "0.14", "0.0099", "0.0088", "1.13")] // 0.0099 / 0.0088 is 1.125; the calculator had more digits.
    public void A_right_value_is_right_in_any_form(params string[] answers)
    {
        MarkedWork marked = Mark(answers);

        Assert.All(marked.Answers.Where(a => a.Given.Length > 0), a => Assert.IsType<Verdict.Right>(a.Verdict));
    }

    [Theory]
    [InlineData("240 mg", FiguresFault.None, false)]
    [InlineData("0.24 mg", FiguresFault.None, true)] // The number is right, the unit is not.
    [InlineData("about 0.24", FiguresFault.None, false)]
    [InlineData("0.24 approx.", FiguresFault.None, false)]
    [InlineData("~0.24", FiguresFault.None, false)]
    public void Units_and_words_around_a_right_number_cost_no_value(string written, FiguresFault figures, bool wrongUnit)
    {
        AnswerMark mark = Of(Mark([written, "0.14", "0.00988", "0.00875", "1.13"]), "massMagnesium");

        Assert.IsType<Verdict.Right>(mark.Verdict);
        Assert.Equal((figures, wrongUnit), (mark.Figures, mark.HasWrongUnit));
    }

    [Fact]
    public void Zeros_that_a_spreadsheet_does_not_keep_are_not_missed()
    {
        // 30.00, 30.20, 30.33 g: 0.2 for 0.20 g, 0.0082 for 0.00823 mol.
        StudentWork Of(params string[] loose) => new(
            "14", Work("14", [30.00m, 30.20m, 30.33m], ["0.2", "0.13", "0.00823", "0.00813", "1.01"]).Readings,
            Answers(["0.2", "0.13", "0.00823", "0.00813", "1.01"]), withoutZeros: loose.ToHashSet());
        MarkedWork kept = Marker().Mark([Of()]).Works[0], lost = Marker().Mark([Of("massMagnesium")]).Works[0];

        Assert.Equal((FiguresFault.TooFew, 4), (kept.Answers[0].Figures, kept.Total));
        Assert.IsType<Verdict.Right>(lost.Answers[0].Verdict);
        Assert.Equal((FiguresFault.None, 5), (lost.Answers[0].Figures, lost.Total));
    }

    [Fact]
    public void A_wrong_value_rightly_used_later_earns_the_later_marks()
    {
        MarkedWork marked = Mark(["0.24", "0.14", "0.00988", "0.00438", "2.26"]);

        Assert.IsType<Verdict.Wrong>(Of(marked, "molesOxygen").Verdict);
        Assert.Equal("molecule-for-atom", Of(marked, "molesOxygen").Ideas!.Candidates[0].Ideas[0].Id);
        Assert.IsType<Verdict.Carried>(Of(marked, "ratio").Verdict);
        Assert.Equal(0.00988 / 0.00438, Of(marked, "ratio").Own!.Value, 1e-12);
        Assert.Equal(4, marked.Total);
    }

    [Fact]
    public void Values_rounded_too_far_and_rightly_used_are_seen_as_such()
    {
        string[] answers = ["0.24", "0.14", "0.01", "0.01", "1.0"];

        Assert.IsType<Verdict.RoundedEarly>(Of(Mark(answers), "ratio").Verdict);
        Assert.Equal(1, Mark(answers, new MarkingPolicy(FiguresPenalty: 0)).Total - Mark(answers, new MarkingPolicy(EarlyRounding.OneMarkOff, FiguresPenalty: 0)).Total);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("1:1")]
    public void An_answer_forced_to_the_textbook_value_earns_nothing(string ratio)
    {
        AnswerMark mark = Of(Mark(["0.24", "0.14", "0.00988", "0.00875", ratio]), "ratio");

        Assert.IsType<Verdict.Wrong>(mark.Verdict);
        Assert.Contains(mark.Ideas!.Candidates.Take(2), c => c.Ideas[0].Id == "rounded-to-whole");
    }

    [Fact]
    public void One_penalty_a_paper_for_figures()
    {
        // Both masses have a decimal too many, both moles far too many figures.
        MarkedWork marked = Mark(["0.240", "0.140", "0.009876543", "0.00875000", "1.13"]);

        Assert.Equal(4, marked.Answers.Count(a => a.Figures == FiguresFault.TooMany));
        Assert.Equal(4, marked.Total);
        Assert.Equal(5, Mark(["0.240", "0.140", "0.009876543", "0.00875000", "1.13"], new MarkingPolicy(FiguresPenalty: 0)).Total);
    }

    [Fact]
    public void One_penalty_a_paper_for_units()
    {
        MarkedWork marked = Mark(["0.24 kg/mol", "0.14 mol", "0.00988 g", "0.00875", "1.13"]);

        Assert.Equal(3, marked.Answers.Count(a => a.HasWrongUnit));
        Assert.Equal(4, marked.Total);
        Assert.Equal(5, Mark(["0.24", "0.14", "0.00988", "0.00875", "1.13"]).Total);
        Assert.Equal(4, Mark(["0.24", "0.14", "0.00988", "0.00875", "1.13"], new MarkingPolicy(UnitsAsked: true)).Total);
    }

    [Fact]
    public void Nothing_is_carried_over_a_mass_that_cannot_be()
    {
        // 0.24 / 24.3 over -0.14 / 16 is -1.13.
        MarkedWork marked = Mark(["0.24", "-0.14", "0.00988", "-0.00875", "-1.13"]);

        Assert.NotNull(Assert.IsType<Verdict.Wrong>(Of(marked, "molesOxygen").Verdict).Reason);
        Assert.NotNull(Assert.IsType<Verdict.Wrong>(Of(marked, "ratio").Verdict).Reason);
    }

    [Fact]
    public void Nothing_is_carried_where_two_equal_numbers_leave_nothing_to_work_out()
    {
        MarkedWork marked = Mark(["0.24", "0.24", "0.0150", "0.0150", "1.00"]);

        Assert.NotNull(Assert.IsType<Verdict.Wrong>(Of(marked, "ratio").Verdict).Reason);
    }

    [Fact]
    public void What_is_missing_or_cannot_be_read_is_named_and_the_rest_is_marked()
    {
        MarkedWork marked = Mark(["0.24", "", "about a hundredth", "0.00875", "1.13"]);

        Assert.IsType<Verdict.Missing>(Of(marked, "massOxygen").Verdict);
        Assert.Contains("about a hundredth", Assert.IsType<Verdict.Unreadable>(Of(marked, "molesMagnesium").Verdict).Reason, StringComparison.Ordinal);
        Assert.Equal(3, marked.Total);
    }

    [Fact]
    public void Without_readings_there_is_nothing_to_mark_by_but_what_follows_from_earlier_answers()
    {
        var work = new StudentWork("14", new Dictionary<string, IReadOnlyList<WrittenNumber>>(), Answers(["0.24", "0.14", "0.00988", "0.00875", "1.13"]));
        MarkedWork marked = Marker().Mark([work]).Works[0];

        Assert.Contains("‘Mass of crucible, lid and magnesium’", Assert.IsType<Verdict.CannotMark>(Of(marked, "massMagnesium").Verdict).Reason, StringComparison.Ordinal);
        Assert.True(Of(marked, "molesMagnesium").IsAccepted);
        Assert.True(Of(marked, "ratio").IsAccepted);
    }

    [Fact]
    public void The_neighbours_readings_explain_an_answer_that_is_right_for_them()
    {
        StudentWork copied = Work("one", [30.00m, 30.24m, 30.38m], ["0.24", "0.14", "", "", "0.97"]);
        StudentWork neighbour = Work("two", [28.11m, 28.37m, 28.55m], ["0.26", "0.18", "", "", "0.95"]);
        // 0.26 / 24.3 over 0.18 / 16.0 is 0.951.
        StudentWork copier = Work("three", [30.00m, 30.24m, 30.38m], ["0.26", "0.14", "", "", "1.13"]);
        MarkedClass marked = Marker().Mark([copied, neighbour, copier]);

        Assert.Contains(Of(marked.Works[2], "massMagnesium").Ideas!.Candidates, c => c.Ideas[0].Id == "other-group" && c.Formula.Contains("two", StringComparison.Ordinal));
    }

    /// <summary>The teacher is told; a student is neither accused nor led to look at others.</summary>
    [Fact]
    public void That_a_value_fits_the_neighbours_readings_is_not_said_to_the_student()
    {
        StudentWork neighbour = Work("two", [28.11m, 28.37m, 28.564m], ["", "", "", "", ""]);
        // 0.194 / 16.00 is 0.012125.
        MarkedWork copier = Marker().Mark([neighbour, Work("three", [30.00m, 30.24m, 30.38m], ["0.24", "0.14", "0.00988", "0.012125", "0.815"])]).Works[1];
        AnswerMark mark = Of(copier, "molesOxygen");

        Assert.Equal("other-group", mark.Ideas!.Candidates[0].Ideas.Single().Id);
        Assert.InRange(mark.Ideas.Candidates[0].Probability, 0.5, 1);
        Assert.DoesNotContain("group", mark.Feedback + copier.Feedback, StringComparison.Ordinal);
    }

    [Fact]
    public void Exchanged_digits_are_a_slip_of_the_pen()
    {
        Assert.Equal("copied-digit", Of(Mark(["0.42", "0.14", "", "", ""]), "massMagnesium").Ideas!.Candidates[0].Ideas[0].Id);
    }

    [Fact]
    public void The_order_of_the_students_and_the_number_of_threads_change_nothing()
    {
        StudentWork[] works =
        [
            .. Enumerable.Range(0, 40).Select(i => Work(
                $"s{i}", [30.00m + (0.01m * i), 30.24m + (0.02m * i), 30.38m + (0.025m * i)], [$"0.{20 + i}", "0.14", "0.0099", "0.0088", $"1.{i:00}"])),
        ];
        Marker marker = Marker();
        MarkedClass one = marker.Mark(works, threads: 1), many = marker.Mark([.. works.Reverse()], threads: 4);

        Assert.Equal(one.Works.Select(Told), many.Works.Reverse().Select(Told));
        Assert.Equal(one.Ideas.Select(i => (i.Idea.Id, Math.Round(i.Share, 9))), many.Ideas.Select(i => (i.Idea.Id, Math.Round(i.Share, 9))));
    }

    [Fact]
    public void A_class_is_put_into_three_groups_and_everybody_is_in_one()
    {
        StudentWork[] works =
        [
            .. Enumerable.Range(0, 6).Select(i => Work($"a{i}", [30.00m, 30.24m, 30.38m], ["0.24", "0.14", "0.00988", "0.00438", "2.26"])),
            .. Enumerable.Range(0, 4).Select(i => Work($"b{i}", [30.00m, 30.24m, 30.38m], ["0.24", "0.14", "0.0200", "0.0175", "1.14"])),
            .. Enumerable.Range(0, 5).Select(i => Work($"c{i}", [30.00m, 30.24m, 30.38m], ["0.24", "0.14", "0.00988", "0.00875", "1.13"])),
            Work("away", [30.00m, 30.24m, 30.38m], ["", "", "", "", ""]),
        ];
        MarkedClass marked = Marker().Mark(works);

        Assert.Equal(["molecule-for-atom", "atomic-number", null], marked.Groupings.Select(g => g.Idea?.Id));
        Assert.Equal([6, 4, 5], marked.Groupings.Select(g => g.Students.Count));
        Assert.Equal(6 / 16.0, marked.Ideas.Single(i => i.Idea.Id == "molecule-for-atom").Share, 0.08);
        QuestionResult oxygen = marked.Questions.Single(q => q.Answer.Id == "molesOxygen");
        Assert.Equal((15, 5), (oxygen.Answered, oxygen.Accepted));
    }

    [Fact]
    public void Feedback_is_two_or_three_sentences_that_tell_no_value()
    {
        foreach (string[] answers in new[]
        {
            new[] { "0.24", "0.14", "0.00988", "0.00438", "2.26" }, ["0.24", "0.14", "0.00988", "0.00875", "1.13"], ["0.24", "", "", "", ""], ["", "", "", "", ""],
            ["30.24", "30.38", "1.24", "1.90", "0.65"], ["0.24", "0.14", "0.01", "0.01", "1.0"],
        })
        {
            string feedback = Mark(answers).Feedback;
            Assert.InRange(feedback.Count(c => c is '.' or '?' or '!') - feedback.Count(c => c == '…'), 1, 4);
            Assert.DoesNotContain(feedback, char.IsAsciiDigit);
        }
    }

    private static (string, int, string) Told(MarkedWork work) =>
        (work.Work.Student, work.Total, string.Join('|', work.Answers.Select(a => a.Verdict.GetType().Name + (a.Ideas is { Candidates: [var first, ..] } ? first.Formula : null))));

    private static MarkedWork Mark(string[] answers, MarkingPolicy? policy = null) =>
        Marker(policy).Mark([Work("14", [30.00m, 30.24m, 30.38m], answers)]).Works[0];

    private static AnswerMark Of(MarkedWork work, string answer) => work.Answers.Single(a => a.Answer.Id == answer);

    private static Marker Marker(MarkingPolicy? policy = null) => new(
        BuiltInPracticals.Find("magnesium-oxide")!, policy ?? MarkingPolicy.Usual, [AtomicWeightSets.Named("school-1dp"), AtomicWeightSets.Named("school-0dp")]);

    private static StudentWork Work(string student, decimal[] readings, string[] answers) => new(
        student,
        new[] { "empty", "before", "after" }.Zip(readings).ToDictionary(r => r.First, r => (IReadOnlyList<WrittenNumber>)[new WrittenNumber(r.Second)]),
        Answers(answers));

    private static Dictionary<string, string> Answers(string[] answers) =>
        new[] { "massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio" }.Zip(answers).ToDictionary(a => a.First, a => a.Second);
}
