using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Adjusted;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>What looks adjusted, on readings worked out by hand: of 0.24 g of magnesium 0.158 g of oxygen are due with Mg 24.3 and O 16.0.</summary>
public class AdjustedLooksTests
{
    [Fact]
    public void The_textbooks_value_against_the_own_readings_is_a_question()
    {
        // 0.10 g were found. The book says 0.158 g, 0.00988 mol, and 1.00.
        AdjustedLook[] looks = Looks(Given.Work(
            "30.00 30.24 30.34", "massMagnesium", "0.24", "massOxygen", "0.158", "molesMagnesium", "0.00988", "molesOxygen", "0.00988", "ratio", "1.00"));

        AdjustedLook look = Assert.Single(looks, l => l.What == "massOxygen");
        Assert.Equal("14", look.Student);
        Assert.EndsWith("?", look.Sentence, StringComparison.Ordinal);
        Assert.InRange(look.Chance, 1e-6, 0.05);
    }

    [Theory]
    [InlineData("0.10")] // Right.
    [InlineData("0.34")] // Wrong, and explained: the vessel with oxide less the empty one.
    [InlineData("0.13")] // Wrong, and not the textbook's.
    public void Nothing_is_asked_about_other_values(string massOxygen) =>
        Assert.Empty(Looks(Given.Work("30.00 30.24 30.34", "massMagnesium", "0.24", "massOxygen", massOxygen)));

    [Fact]
    public void A_class_whose_readings_all_give_the_accepted_value_is_a_question_and_one_such_group_is_not()
    {
        // On 0.001 g: 0.240 g of magnesium and 0.158 g of oxygen; 0.243 and 0.160; 0.237 and 0.156; 0.246 and 0.162.
        string[] exact = ["30.000 30.240 30.398", "31.000 31.243 31.403", "29.000 29.237 29.393", "28.000 28.246 28.408"];
        string[] usual = ["30.000 30.241 30.391", "31.000 31.239 31.385", "29.000 29.233 29.380", "28.000 28.246 28.408"];

        Assert.Contains(Looks([.. exact.Select((r, i) => Given.Of($"s{i}", $"{i}", r, "massMagnesium", ""))]), l => l is { Student: null, What: "after", Chance: < 0.001 });
        Assert.Empty(Looks([.. usual.Select((r, i) => Given.Of($"s{i}", $"{i}", r, "massMagnesium", ""))]));
    }

    [Fact]
    public void Repeated_weighings_that_never_differ_are_a_question()
    {
        StudentWork[] Class(Func<int, string> second) =>
            [.. Enumerable.Range(0, 12).Select(i => Given.Of($"s{i}", $"{i}", $"30.00 30.{20 + i} 30.{36 + (i % 5)} {second(i)}", "massMagnesium", ""))];

        Assert.Contains(Looks(Class(i => $"30.{36 + (i % 5)}")), l => l is { Student: null, What: "after" });
        Assert.Empty(Looks(Class(i => $"30.{36 + (i % 5) + (i % 2)}")));
    }

    [Fact]
    public void Two_groups_with_the_same_digits_are_a_question_and_two_students_of_one_group_are_not()
    {
        AdjustedLook look = Assert.Single(Looks(
            Given.Of("a", "1", "30.00 30.24 30.38", "massMagnesium", ""), Given.Of("b", "2", "30.00 30.24 30.38", "massMagnesium", ""), Given.Of("c", "3", "30.01 30.24 30.38", "massMagnesium", "")));
        Assert.Contains("group 1 and group 2", look.Sentence, StringComparison.Ordinal);
        Assert.Empty(Looks(Given.Of("a", "1", "30.00 30.24 30.38", "massMagnesium", ""), Given.Of("b", "1", "30.00 30.24 30.38", "massMagnesium", "")));
    }

    private static AdjustedLook[] Looks(params StudentWork[] works) => [.. Given.Marker().Mark(works).ToAskAbout];
}
