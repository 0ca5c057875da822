using Calx.Chemistry.Equations;
using Calx.Measurement.Numbers;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Chemistry.Equations;

/// <summary>A slow search through all small coefficients judges the elimination.</summary>
public sealed class BalancingPropertyTests
{
    private const int Highest = 5;

    private static readonly Gen<string> Species = Gen.OneOf(
        "H2", "O2", "H2O", "H2O2", "C", "CO", "CO2", "CH4", "N2", "NH3", "NO", "NO2", "H^+", "OH^-", "e^-", "NH4^+", "O3", "N2O");

    private static readonly Gen<string> Small = Gen.Select(
        Species.Array[1, 3], Species.Array[1, 3], (left, right) => $"{string.Join(" + ", left)} -> {string.Join(" + ", right)}");

    private static readonly Gen<string> Noise =
        Gen.OneOf("MgOHCe+-><=→⇌ 0123()^.aqs".ToCharArray()).Array[0, 40].Select(letters => new string(letters));

    [Fact]
    public void A_search_through_small_coefficients_agrees() => Small.Always(
        text =>
        {
            Equation equation = Equation.Parse(text).Value;
            List<long[]> found = Search(equation);
            switch (equation.Balance())
            {
                case BalancingResult.Balanced one:
                    Assert.All(found, way => Assert.Equal(one.Coefficients.Select(c => c * way[0]), way.Select(c => c * one.Coefficients[0])));
                    Assert.True(one.Coefficients.Any(c => c > Highest) || found.Count > 0, text);
                    break;
                case BalancingResult.CannotBalance:
                    Assert.Empty(found);
                    break;
                case BalancingResult.ManyBalances many:
                    Assert.True(many.Elementary.Count > 1, text);
                    Assert.All(many.Elementary, way => Assert.True(Conserves(equation, way), text));
                    Assert.All(found, way => Assert.Contains(many.Elementary, e => e.Zip(way).All(pair => pair.First == 0 || pair.Second > 0)));
                    break;
                default:
                    Assert.Fail(text);
                    break;
            }
        },
        iter: 200);

    [Fact]
    public void Atoms_and_charge_are_conserved_in_lowest_numbers() => Small.Always(text =>
    {
        Equation equation = Equation.Parse(text).Value;
        IReadOnlyList<IReadOnlyList<long>> ways = equation.Balance() switch
        {
            BalancingResult.Balanced one => [one.Coefficients],
            BalancingResult.ManyBalances many => many.Elementary,
            _ => [],
        };
        Assert.All(ways, way => Assert.True(Conserves(equation, way), text));
        Assert.All(ways, way => Assert.Equal(1, way.Aggregate(0L, Divisor)));
    });

    [Fact]
    public void A_balanced_equation_reads_back_as_right() => Small.Always(text =>
    {
        if (Equation.Parse(text).Value.Balance() is BalancingResult.Balanced one)
        {
            Equation again = Equation.Parse(one.Text).Value;
            Assert.IsType<WrittenCheck.Lowest>(again.CheckAsWritten());
            Assert.Equal(one.Text, again.ToString());
        }
    });

    [Fact]
    public void Elementary_balancings_come_each_once_and_none_contains_another() => Small.Always(text =>
    {
        if (Equation.Parse(text).Value.Balance() is BalancingResult.ManyBalances many)
        {
            for (int i = 0; i < many.Elementary.Count; i++)
            {
                for (int j = 0; j < many.Elementary.Count; j++)
                {
                    Assert.True(i == j || many.Elementary[i].Zip(many.Elementary[j]).Any(p => p.First == 0 && p.Second > 0), text);
                }
            }
        }
    });

    [Fact]
    public void Any_text_is_read_or_declined_within_its_own_length() => Gen.OneOf(Noise, Gen.String).Always(text =>
    {
        Parsed<Equation> read = Equation.Parse(text);
        Assert.True(read.Succeeded || (read.Fault.Span.Start >= 0 && read.Fault.Span.End <= text.Length), text);
        if (read.Succeeded)
        {
            Assert.NotNull(read.Value.Balance());
            Assert.NotNull(read.Value.CheckAsWritten());
        }
    });

    private static List<long[]> Search(Equation equation)
    {
        Term[] terms = [.. equation.Reactants, .. equation.Products];
        string[] symbols = [.. terms.SelectMany(t => t.Formula.Composition).Select(a => a.Element.Symbol).Distinct(), "charge"];
        long[][] rows = [.. symbols.Select(symbol => terms.Select((t, i) => (i < equation.Reactants.Count ? 1 : -1)
            * (symbol == "charge" ? t.Formula.Charge : t.Formula.Composition.Where(a => a.Element.Symbol == symbol).Sum(a => a.Count))).ToArray())];
        var found = new List<long[]>();
        Try(rows, new long[terms.Length], 0, found);
        return found;
    }

    private static void Try(long[][] rows, long[] way, int place, List<long[]> found)
    {
        if (place == way.Length)
        {
            if (Array.TrueForAll(rows, row => Sum(row, way) == 0))
            {
                found.Add([.. way]);
            }

            return;
        }

        for (way[place] = 1; way[place] <= Highest; way[place]++)
        {
            Try(rows, way, place + 1, found);
        }
    }

    private static long Sum(long[] row, long[] way)
    {
        long sum = 0;
        for (int i = 0; i < row.Length; i++)
        {
            sum += row[i] * way[i];
        }

        return sum;
    }

    private static bool Conserves(Equation equation, IReadOnlyList<long> way)
    {
        var sums = new Dictionary<string, long>();
        int i = 0;
        foreach ((Term term, int sign) in equation.Reactants.Select(t => (t, 1)).Concat(equation.Products.Select(t => (t, -1))))
        {
            foreach (var atoms in term.Formula.Composition)
            {
                sums[atoms.Element.Symbol] = sums.GetValueOrDefault(atoms.Element.Symbol) + (sign * way[i] * atoms.Count);
            }

            sums["charge"] = sums.GetValueOrDefault("charge") + (sign * way[i] * term.Formula.Charge);
            i++;
        }

        return sums.Values.All(sum => sum == 0);
    }

    private static long Divisor(long a, long b) => b == 0 ? a : Divisor(b, a % b);
}
