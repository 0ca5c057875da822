using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Chemistry.Elements;

// Standard atomic weights 2021 and the changes of 2024: IUPAC/CIAAW, as the heads of the two reference files say.
public sealed class AtomicWeightTests
{
    private static readonly string[][] Published = Rows("atomic_weights_iupac2021.csv");

    private static readonly string[][] Changes = Rows("atomic_weights_ciaaw2024_changes.csv");

    [Fact]
    public void Every_element_has_its_number_symbol_and_name()
        => Assert.Equal(
            Published.Select(row => (int.Parse(row[0], CultureInfo.InvariantCulture), row[1], row[2])),
            Element.All.Select(element => (element.AtomicNumber, element.Symbol, element.Name)));

    [Fact]
    public void Every_standard_weight_is_as_published_in_2021_but_for_the_three_changed_in_2024()
    {
        IEnumerable<string[]> unchanged = Published.Where(row => Changes.All(change => change[0] != row[1]));
        Assert.Equal(115, unchanged.Count());
        Assert.All(unchanged, row => Assert.Equal(Expected(row), Element.Of(row[1]).StandardWeight));
    }

    [Fact]
    public void Zirconium_gadolinium_and_lutetium_are_as_changed_in_2024()
        => Assert.All(Changes, row => Assert.Equal(
            new StandardAtomicWeight.SingleValue(Number(row[4]), Number(row[5])), Element.Of(row[0]).StandardWeight));

    [Fact]
    public void An_interval_is_read_as_rectangular()
    {
        // JCGM 100:2008, 4.3.7, worked by hand for magnesium, [24.304, 24.307].
        UncertainValue magnesium = AtomicWeights.Iupac2024.Of(Element.Of("Mg"));
        Assert.Equal(24.3055, magnesium.Value, 12);
        Assert.Equal(0.0015 / 1.7320508075688772, magnesium.StandardUncertainty, 15);
    }

    [Fact]
    public void A_weight_is_one_input_at_every_call()
    {
        UncertainValue difference = AtomicWeights.Iupac2024.Of(Element.Of("Cu")) - AtomicWeights.Iupac2024.Of(Element.Of("Cu"));
        Assert.Equal(0, difference.StandardUncertainty);
    }

    [Theory]
    [InlineData("Tc")]
    [InlineData("Pm")]
    [InlineData("Po")]
    [InlineData("Pu")]
    [InlineData("Og")]
    public void Elements_without_stable_proportions_have_no_weight(string symbol)
        => Assert.All(AtomicWeightSets.All, set => Assert.False(set.Has(Element.Of(symbol))));

    // What tables for schools print: common practice, no source.
    [Theory]
    [InlineData("school-1dp", "H", 1.0)]
    [InlineData("school-1dp", "Mg", 24.3)]
    [InlineData("school-1dp", "Cl", 35.5)]
    [InlineData("school-1dp", "Cu", 63.5)]
    [InlineData("school-1dp", "Fe", 55.8)]
    [InlineData("school-1dp", "Ar", 39.9)]
    [InlineData("school-0dp", "Mg", 24)]
    [InlineData("school-0dp", "Cl", 35.5)]
    [InlineData("school-0dp", "Cu", 63.5)]
    [InlineData("school-0dp", "Zn", 65)]
    [InlineData("school-0dp-cu64", "Cu", 64)]
    [InlineData("school-0dp-cu64", "Ag", 108)]
    [InlineData("iupac-abridged", "O", 15.999)]
    public void A_rounded_set_is_exact(string set, string symbol, double weight)
    {
        UncertainValue found = AtomicWeightSets.Named(set).Of(Element.Of(symbol));
        Assert.Equal(weight, found.Value);
        Assert.True(found.IsExact);
    }

    [Fact]
    public void An_unknown_set_is_named_with_those_there_are()
        => Assert.Contains(
            "school-1dp", Assert.Throws<ArgumentException>(() => AtomicWeightSets.Named("school")).Message, StringComparison.Ordinal);

    [Fact]
    public void Symbols_are_looked_up_with_their_capitals()
    {
        Assert.True(Element.TryFind("Mg", out Element? magnesium));
        Assert.Equal(12, magnesium.AtomicNumber);
        Assert.All((string[])["mg", "MG", "Xq", "", "Mgo", "é"], text => Assert.False(Element.TryFind(text, out _)));
        Assert.Equal(("D", 1), (Element.Deuterium.Symbol, Element.Deuterium.AtomicNumber));
        Assert.Equal(("T", 1), (Element.Tritium.Symbol, Element.Tritium.AtomicNumber));
    }

    private static StandardAtomicWeight Expected(string[] row) => row[3] switch
    {
        "interval" => new StandardAtomicWeight.Interval(Number(row[4]), Number(row[5]), Number(row[6]), Number(row[7])),
        "value" => new StandardAtomicWeight.SingleValue(Number(row[6]), Number(row[7])),
        _ => new StandardAtomicWeight.NotDefined(),
    };

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);

    private static string[][] Rows(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", file))
            .Where(line => line[0] != '#').Skip(1).Select(line => line.Split(','))];
}
