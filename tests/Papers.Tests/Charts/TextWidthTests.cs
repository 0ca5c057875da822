using Calx.Papers.Charts;

namespace Calx.Papers.Tests.Charts;

public class TextWidthTests
{
    // Advances of the bold letters in Lato 2.007 (table hmtx, read with fontTools 4.38), summed by hand in thousandths.
    [Theory]
    [InlineData("W", 1.051)]
    [InlineData("0123456789", 5.80)]
    [InlineData("il", 0.502)]
    public void Widths_are_those_of_the_font(string text, double em) => Assert.Equal(em, TextWidth.Of(text, 1), 1e-9);

    [Fact]
    public void Text_that_fits_is_left_alone_and_longer_text_is_cut_to_fit()
    {
        Assert.Equal("Amber", TextWidth.Cut("Amber", 100));
        string cut = TextWidth.Cut(new string('W', 40), 100);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.InRange(TextWidth.Of(cut), 80, 100);
    }

    [Fact]
    public void A_letter_of_several_signs_is_not_cut_in_two()
    {
        string flasks = string.Concat(Enumerable.Repeat("⚗\uFE0F", 30)); // A sign with its variation selector.
        string cut = TextWidth.Cut(flasks, 100);

        Assert.Equal('…', cut[^1]);
        Assert.Equal('\uFE0F', cut[^2]);
    }
}
