using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Judgements on readings worked out by hand. The rules are common practice, no source.</summary>
public class JudgementTests
{
    // 0.24 g of magnesium took 0.14 g of oxygen: 0.00988 over 0.00875 is 1.129.
    private const string Usual = "30.00 30.24 30.38";

    [Theory]
    [InlineData("MgO")]
    [InlineData("Mg1O1")]
    [InlineData("Mg₁O₁")]
    [InlineData("mgo")]
    [InlineData(" Mg O ")]
    [InlineData("OMg")]
    [InlineData("MG1O1")]
    public void The_formula_nearest_to_the_own_ratio_is_right_however_it_is_written(string formula) =>
        Assert.IsType<Verdict.Right>(Given.Mark(Given.Work(Usual, "formula", formula), "formula").Verdict);

    [Theory]
    [InlineData("Mg9O8", "ratio-over-read")] // 1.125
    [InlineData("Mg113O100", "ratio-over-read")]
    [InlineData("Mg2O2", "not-simplest")]
    [InlineData("H2O", null)]
    [InlineData("MgO2", null)]
    [InlineData("MgOH", null)]
    [InlineData("O2Mg", null)]
    public void Another_formula_is_wrong_and_what_may_lie_behind_it_is_named(string formula, string? idea)
    {
        AnswerMark mark = Given.Mark(Given.Work(Usual, "formula", formula), "formula");

        Assert.IsType<Verdict.Wrong>(mark.Verdict);
        Assert.Equal(idea, Given.Idea(mark));
        Assert.Equal((0, "MgO"), (mark.Marks, mark.ExpectedText));
    }

    // O2 for O makes the ratio 2.26; two atoms of magnesium for one of oxygen follow from that, and 1 : 1 does not.
    [Fact]
    public void A_formula_follows_from_the_ratio_as_it_was_written()
    {
        StudentWork Work(string formula) => Given.Work(
            Usual, "massMagnesium", "0.24", "massOxygen", "0.14", "molesMagnesium", "0.00988", "molesOxygen", "0.00438", "ratio", "2.26", "formula", formula);

        Assert.IsType<Verdict.Carried>(Given.Mark(Work("Mg2O"), "formula").Verdict);
        Assert.Equal(1, Given.Mark(Work("Mg2O"), "formula").Marks);
        Assert.Equal("forced-to-accepted", Given.Idea(Given.Mark(Work("MgO"), "formula")));
        Assert.Equal("inverted", Given.Idea(Given.Mark(Work("MgO2"), "formula")));
    }

    // Beyond 2 : 1 the whole number next to the ratio is the simple formula; a ratio of 156 is a vessel that was weighed with it.
    [Theory]
    [InlineData("2.87", "Mg3O", true)]
    [InlineData("2.87", "Mg2O", false)]
    [InlineData("0.25", "MgO4", true)]
    [InlineData("156", "Mg156O", false)]
    [InlineData("156", "MgO", false)]
    public void A_ratio_beyond_small_numbers_carries_the_next_whole_number_and_none_that_cannot_be(string ratio, string formula, bool carried) =>
        Assert.Equal(carried, Given.Mark(Given.Work(Usual, "ratio", ratio, "formula", formula), "formula").IsCarried);

    [Fact]
    public void What_is_no_formula_is_left_to_a_person() =>
        Assert.IsType<Verdict.Unreadable>(Given.Mark(Given.Work(Usual, "formula", "magnesium oxide"), "formula").Verdict);

    // Two steps of the balance are 0.02 g. Of 0.04 g of ribbon the whole gain is 0.026 g, and two steps are more than half of it.
    [Theory]
    [InlineData("30.00 30.24 30.37 30.39", "complete")]
    [InlineData("30.00 30.24 30.37 30.40", "not-complete")]
    [InlineData("30.00 30.24 30.37", "cannot-tell")]
    [InlineData("30.00 30.04 30.06 30.06", "cannot-tell")]
    public void Complete_or_not_is_told_by_the_last_two_weighings(string readings, string right)
    {
        foreach (string answer in new[] { "complete", "not-complete", "cannot-tell" })
        {
            AnswerMark mark = Given.Mark(Given.Work(readings, "complete", answer), "complete");

            Assert.Equal(right, mark.ExpectedText);
            Assert.Equal(answer == right ? 1 : 0, mark.Marks);
        }
    }

    [Theory]
    [InlineData("Yes", true)]
    [InlineData("constant mass", true)]
    [InlineData("Yes, it was complete.", true)]
    [InlineData("not complete", false)]
    [InlineData("y", true)]
    [InlineData("Yes it was finished because the last two were the same", true)]
    [InlineData("it was complete", true)]
    [InlineData("no, it was still going up", false)]
    [InlineData("not all of it had burnt", false)]
    public void Usual_words_stand_for_a_choice(string answer, bool right) =>
        Assert.Equal(right, Given.Mark(Given.Work("30.00 30.24 30.38 30.38", "complete", answer), "complete").IsAccepted);

    // 0.10 g of oxygen on 0.24 g of magnesium: too little, 1.58 where 1 is accepted.
    [Theory]
    [InlineData("product-lost", true)]
    [InlineData("product lost as smoke or powder", true)]
    [InlineData("not-all-reacted", true)]
    [InlineData("not all the magnesium burnt", true)]
    [InlineData("Product was lost as smoke", true)]
    [InlineData("the crucible was still warm", true)]
    [InlineData("misread", true)] // Can do either.
    [InlineData("extra-mass", false)]
    [InlineData("none", false)]
    public void A_cause_fits_where_it_moves_the_value_to_the_side_on_which_it_lies(string cause, bool fits)
    {
        AnswerMark mark = Given.Mark(Given.Work("30.00 30.24 30.34", "cause", cause), "cause");

        Assert.Equal(fits, mark.Verdict is Verdict.Right);
        Assert.Equal(fits ? null : cause == "none" ? "no-cause-seen" : "other-sign", Given.Idea(mark));
    }

    [Fact]
    public void Blame_is_no_cause_and_an_unknown_word_is_left_to_a_person()
    {
        Assert.Equal("blame", Given.Idea(Given.Mark(Given.Work(Usual, "cause", "Human error."), "cause")));
        Assert.IsType<Verdict.Unreadable>(Given.Mark(Given.Work(Usual, "cause", "the moon"), "cause").Verdict);
    }

    // 0.158 g are due and 0.15 g were found: less than two steps away.
    [Fact]
    public void Where_the_value_is_as_expected_no_cause_is_right() =>
        Assert.IsType<Verdict.Right>(Given.Mark(Given.Work("30.00 30.24 30.39", "cause", "nothing"), "cause").Verdict);

    [Fact]
    public void A_cause_that_fits_the_own_wrong_value_is_carried()
    {
        StudentWork work = Given.Work("30.00 30.24 30.34", "ratio", "0.63", "cause", "extra-mass", "improvement", "extra-mass");

        Assert.IsType<Verdict.Carried>(Given.Mark(work, "cause").Verdict);
        Assert.IsType<Verdict.Carried>(Given.Mark(work, "improvement").Verdict);
    }

    [Theory]
    [InlineData("product-lost", "lift the lid only a little and only for a moment; put it back as soon as smoke shows", true)]
    [InlineData("product-lost", "damp-vessel", false)]
    [InlineData("", "damp-vessel", true)] // Water driven off makes the last reading smaller too: it fits the sign.
    [InlineData("", "extra-mass", false)]
    public void An_improvement_works_against_the_cause_that_was_named_or_fits_the_sign(string cause, string improvement, bool right)
    {
        AnswerMark mark = Given.Mark(Given.Work("30.00 30.24 30.34", "cause", cause, "improvement", improvement), "improvement");

        Assert.Equal(right, mark.Verdict is Verdict.Right);
        Assert.Equal(right ? null : "other-causes-remedy", Given.Idea(mark));
    }

    // 0.24 g of magnesium each; oxygen 0.15, 0.16, 0.15, 0.16, 0.15 g and in the sixth group 0.05 g.
    [Theory]
    [InlineData("6", true)]
    [InlineData("Group 6", true)]
    [InlineData("group 2", false)]
    [InlineData("none", false)]
    public void The_odd_group_is_the_one_far_from_the_others(string answer, bool right)
    {
        string[] readings = ["30.00 30.24 30.39", "31.00 31.24 31.40", "29.50 29.74 29.89", "28.00 28.24 28.40", "30.50 30.74 30.89", "27.00 27.24 27.29"];
        StudentWork[] works = [.. readings.Select((r, i) => Given.Of($"s{i}", $"Group {i + 1}", r, "oddGroup", i == 0 ? answer : ""))];

        AnswerMark mark = Given.Marker().Mark(works).Works[0].Answers.Single(a => a.Answer.Id == "oddGroup");
        Assert.Equal(right, mark.Verdict is Verdict.Right);
        Assert.Equal("Group 6", mark.ExpectedText);
    }

    [Fact]
    public void Nothing_is_odd_among_groups_that_agree_and_of_few_nobody_can_tell()
    {
        StudentWork Of(int i, string answer) => Given.Of($"s{i}", $"{i}", $"30.0{i} 30.2{i + 4} 30.{39 + i}", "oddGroup", answer);
        MarkedClass six = Given.Marker().Mark([.. Enumerable.Range(0, 6).Select(i => Of(i % 5, i == 0 ? "none" : "3")).DistinctBy(w => w.Student), Given.Of("s7", "7", "31.00 31.24 31.40", "oddGroup", "7")]);

        Assert.IsType<Verdict.Right>(six.Works[0].Answers.Single(a => a.Answer.Id == "oddGroup").Verdict);
        Assert.All(six.Works.Skip(1), w => Assert.Equal("scatter-taken-for-odd", Given.Idea(w.Answers.Single(a => a.Answer.Id == "oddGroup"))));
        Assert.IsType<Verdict.CannotMark>(Given.Mark(Given.Work(Usual, "oddGroup", "2"), "oddGroup").Verdict);
        Assert.True(Given.Marker().Mark([Of(1, "cannot tell"), Of(2, "")]).Works[0].Answers.Single(a => a.Answer.Id == "oddGroup").IsAccepted);
    }

    [Fact]
    public void Only_what_was_asked_is_marked()
    {
        StudentWork work = Given.Work(Usual, "massMagnesium", "0.24");

        Assert.Equal(["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio"], Given.Marker().Mark([work]).Works[0].Answers.Select(a => a.Answer.Id));
        MarkedWork asked = Given.Marker(["massMagnesium", "formula", "what-happened"]).Mark([work]).Works[0];
        Assert.Equal(["massMagnesium", "formula"], asked.Answers.Select(a => a.Answer.Id));
        Assert.Equal((1, 4, 0), (asked.Total, asked.Of, asked.Waiting));
    }
}
