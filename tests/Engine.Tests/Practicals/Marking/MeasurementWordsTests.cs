using Calx.Practicals.Marking.Prose;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Words of measurement. Terms as in JCGM 200:2012; which uses are to be pointed out is common practice, no source.</summary>
public class MeasurementWordsTests
{
    private static readonly MeasurementWords Words = MeasurementWords.Of(Given.Magnesium);

    [Theory]
    [InlineData("The weight rose by 0.14 g.", "weight")]
    [InlineData("Our result is reliable because we did it twice.", "reliable")]
    [InlineData("It was human error.", "human error")]
    [InlineData("The balance had an accuracy of 0.01 g.", "accuracy of 0.01 g")]
    [InlineData("Our balance is very accurate.", "very accurate")]
    [InlineData("It is more accurate because it has more decimal places.", "accurate")]
    [InlineData("Our ratio was precise, it was close to the true value.", "precise")]
    [InlineData("The mean removes the bias from lost smoke.", "mean")]
    [InlineData("The true value in the book is 1 to 1.", "true value")]
    [InlineData("We made an error when we copied it.", "made an error when")]
    [InlineData("This proves that mass is conserved.", "proves")]
    [InlineData("Group 4 was anomalous and we left it out.", "anomalous")]
    [InlineData("Oxygen has no mass so it cannot be that.", "Oxygen has no")]
    [InlineData("It is heavier, the heat added mass.", "heat added mass")]
    [InlineData("The powder swelled up, so it got heavier.", "swelled")]
    public void What_says_something_else_than_is_meant_is_pointed_out(string text, string word)
    {
        WordUse use = Assert.Single(Words.In(text), w => w.IsMisused);

        Assert.Equal(word, text.Substring(use.Start, use.Length));
        Assert.False(string.IsNullOrWhiteSpace(use.Advice));
    }

    [Theory]
    [InlineData("The mass rose by 0.14 g because oxygen joined the magnesium.", "mass", "0")]
    [InlineData("The last two weighings agree within the resolution of 0.01 g, so it is constant mass.", "resolution,constant mass", "0")]
    [InlineData("Its accuracy is good: it lies near the true value.", "accuracy,true value", "0")]
    [InlineData("Group 4 was anomalous and was left out because its lid was off the pan.", "anomalous", "0")]
    [InlineData("The mean has a smaller uncertainty; a systematic error stays.", "mean,uncertainty,systematic error", "0")]
    [InlineData("It weighs 0.4 N, that is its weight = 0.4 N.", "", "0")]
    [InlineData("We weighed it again.", "", "0")]
    [InlineData("The ratio is repeatable and reproducible.", "ratio,repeatable,reproducible", "0")]
    public void What_is_rightly_used_is_found_and_not_pointed_out(string text, string found, string misused)
    {
        IReadOnlyList<WordUse> uses = Words.In(text);

        Assert.Equal(misused, uses.Count(u => u.IsMisused).ToString(System.Globalization.CultureInfo.InvariantCulture));
        string[] words = [.. uses.Select(u => text.Substring(u.Start, u.Length).ToLowerInvariant())];
        Assert.All(found.Split(',', StringSplitOptions.RemoveEmptyEntries), f => Assert.Contains(f, words));
    }

    [Fact]
    public void No_two_overlap_and_they_stand_in_order_whatever_the_text_is()
    {
        string[] texts = ["", ".", new string('a', 10_000), "weight weight.weight!reliable reliability\nhuman errors, mean mean range", string.Concat(Enumerable.Repeat("weight accurate decimal ", 400))];
        foreach (string text in texts)
        {
            IReadOnlyList<WordUse> uses = Words.In(text);
            Assert.All(uses.Zip(uses.Skip(1)), p => Assert.True(p.First.Start + p.First.Length <= p.Second.Start));
            Assert.All(uses, u => Assert.InRange(u.Start + u.Length, 1, text.Length));
        }
    }
}
