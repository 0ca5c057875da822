using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Slips;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Model.Slips;

/// <summary>How a slip turns what the balance shows into what is written, and back. The shares of the kinds are judgement;
/// what is held here is that both directions say the same.</summary>
public class PenSlipsTests
{
    private static readonly FaultEffect.Pen Usual = new(Swapped: 0.4, WrongDigit: 0.36, WholeGram: 0.2, DroppedZero: 0.04);

    private static readonly Gen<(WrittenNumber Shown, FaultEffect.Pen Shares)> Case =
        from decimals in Gen.Int[0, 3]
        from steps in Gen.OneOf(Gen.Int[0, 999_999], Gen.Int[0, 999], Gen.Int[100_000, 109_999])
        from a in Gen.Double[0.05, 1]
        from b in Gen.Double[0.05, 1]
        from c in Gen.Double[0.05, 1]
        from d in Gen.Double[0, 1]
        let sum = a + b + c + d
        let shown = new decimal(steps, 0, 0, false, (byte)decimals)
        where shown < 1000
        select (new WrittenNumber(shown), new FaultEffect.Pen(a / sum, b / sum, c / sum, d / sum));

    // 24.31 has three pairs of unlike neighbours and four digits; it has no zero at its end, so that share goes to the rest.
    [Theory]
    [InlineData("42.31", 0.4 / 3)]
    [InlineData("24.13", 0.4 / 3)]
    [InlineData("23.41", 0.4 / 3)]
    [InlineData("24.38", 0.36 / 36)]
    [InlineData("25.31", (0.2 * 0.35) + (0.36 / 36))]
    [InlineData("23.31", (0.2 * 0.35) + (0.36 / 36))]
    [InlineData("34.31", (0.2 * 0.15) + (0.36 / 36))]
    [InlineData("4.31", 0.36 / 36)]
    [InlineData("24.3", 0)]
    public void Each_slip_of_a_reading_has_the_share_counted_by_hand(string written, double share)
    {
        Assert.Equal(share / 0.96, Forward(Number("24.31"), Usual).GetValueOrDefault(Number(written)), 1e-14);
    }

    /// <summary>Writing one slip and listing all of them are two programs: along a fine ladder of shares the one walks through the
    /// other's list in its order.</summary>
    [Fact]
    public void Writing_draws_from_the_list_of_all_slips()
    {
        Case.Always(
            c =>
            {
                IReadOnlyList<(WrittenNumber Written, double Probability)> all = PenSlips.Enumerate(c.Shown, c.Shares);
                double below = 0;
                foreach ((WrittenNumber written, double probability) in all)
                {
                    if (probability > 1e-6)
                    {
                        Assert.Equal(written, PenSlips.Write(c.Shown, c.Shares, below + (0.01 * probability)));
                        Assert.Equal(written, PenSlips.Write(c.Shown, c.Shares, below + (0.99 * probability)));
                    }

                    below += probability;
                }

                Assert.Equal(1, below, 1e-12);
            },
            iter: 300);
    }

    [Fact]
    public void A_dropped_zero_leaves_the_number_with_fewer_decimals()
    {
        Assert.Equal(0.04, Forward(Number("24.30"), Usual)[Number("24.3")], 1e-14);
        Assert.Equal(0.04, Forward(Number("24.00"), Usual)[Number("24")], 1e-14);
        Assert.DoesNotContain(Backward(Number("24.3"), 0.01m, Usual), c => c.Key == Number("24.30"));
    }

    [Fact]
    public void What_cannot_be_leaves_its_share_to_the_rest()
    {
        // 0.33: no gram less; 2.22: no pair to swap. Counted by hand.
        Assert.Equal(0.2 * 0.7 / 0.96, Sum(Number("0.33"), "1.33") - (0.36 / 27 / 0.96), 1e-14);
        Assert.Equal(0.36 / 27 / 0.56, Sum(Number("2.22"), "2.29"), 1e-14);

        static double Sum(WrittenNumber shown, string written) => Forward(shown, Usual)[Number(written)];
    }

    [Fact]
    public void No_slip_befalls_a_number_below_nothing() =>
        Assert.Equal([(Number("-0.01"), 1.0)], PenSlips.Enumerate(Number("-0.01"), Usual));

    [Fact]
    public void The_shares_of_all_slips_add_up_to_one_and_none_leaves_the_display() => Case.Always(
        c =>
        {
            IReadOnlyList<(WrittenNumber Written, double Probability)> all = PenSlips.Enumerate(c.Shown, c.Shares);
            Assert.Equal(1, all.Sum(w => w.Probability), 1e-12);
            Assert.DoesNotContain(all, w => w.Written == c.Shown || w.Written.Value < 0);
        },
        iter: 400);

    [Fact]
    public void What_leads_forward_leads_back_with_the_same_probability() => Case.Always(
        c =>
        {
            decimal step = new(1, 0, 0, false, (byte)c.Shown.Decimals);
            foreach ((WrittenNumber written, double probability) in Forward(c.Shown, c.Shares).Where(w => w.Key.Value != c.Shown.Value && w.Value > 0))
            {
                Assert.Equal(probability, Backward(written, step, c.Shares)[c.Shown], 1e-13);
            }
        },
        iter: 40);

    [Fact]
    public void What_leads_back_leads_forward_with_the_same_probability() => Case.Always(
        c =>
        {
            decimal step = new(1, 0, 0, false, (byte)c.Shown.Decimals);
            IReadOnlyList<SlipCandidate> back = PenSlips.Displayed(c.Shown, step, c.Shares);
            Assert.Equal(back.OrderByDescending(b => b.Probability).Select(b => b.Probability), back.Select(b => b.Probability));
            Assert.Equal(back.Count, back.DistinctBy(b => b.Displayed).Count());
            foreach (SlipCandidate candidate in back)
            {
                Assert.Equal(candidate.Probability, Forward(candidate.Displayed, c.Shares)[c.Shown], 1e-13);
            }
        },
        iter: 40);

    [Theory]
    [InlineData("0.02")]
    [InlineData("0.05")]
    public void Only_what_the_balance_can_show_leads_back(string step)
    {
        decimal division = Number(step).Value;
        IReadOnlyList<SlipCandidate> back = PenSlips.Displayed(Number("24.37"), division, Usual);
        Assert.NotEmpty(back);
        Assert.All(back, c => Assert.Equal(0, c.Displayed.Value % division));
        Assert.Empty(PenSlips.Displayed(Number("24.375"), division, Usual));
    }

    // Chi-square over the 24 likeliest written numbers and the rest, at 0.1 %.
    [Fact]
    public void Drawn_slips_come_as_often_as_they_should()
    {
        const int Draws = 20_000;
        var random = new RandomStream(11, 0);
        Dictionary<WrittenNumber, int> seen = [];
        for (int i = 0; i < Draws; i++)
        {
            WrittenNumber written = PenSlips.Write(Number("24.30"), Usual, random.NextDouble());
            seen[written] = seen.GetValueOrDefault(written) + 1;
        }

        KeyValuePair<WrittenNumber, double>[] likeliest = [.. Forward(Number("24.30"), Usual).OrderByDescending(w => w.Value).Take(24)];
        double rest = 1 - likeliest.Sum(w => w.Value);
        double chiSquare = likeliest.Append(new(default, rest)).Sum(w =>
        {
            int count = w.Key == default ? Draws - likeliest.Sum(l => seen.GetValueOrDefault(l.Key)) : seen.GetValueOrDefault(w.Key);
            return Math.Pow(count - (Draws * w.Value), 2) / (Draws * w.Value);
        });
        Assert.InRange(chiSquare, 0, ChiSquared.UpperQuantile(0.001, likeliest.Length));
    }

    private static WrittenNumber Number(string digits)
    {
        Assert.True(WrittenNumber.TryParse(digits, out WrittenNumber number));
        return number;
    }

    private static Dictionary<WrittenNumber, double> Forward(WrittenNumber shown, FaultEffect.Pen shares) =>
        PenSlips.Enumerate(shown, shares).GroupBy(w => w.Written).ToDictionary(w => w.Key, w => w.Sum(x => x.Probability));

    private static Dictionary<WrittenNumber, double> Backward(WrittenNumber written, decimal step, FaultEffect.Pen shares) =>
        PenSlips.Displayed(written, step, shares).ToDictionary(c => c.Displayed, c => c.Probability);
}
