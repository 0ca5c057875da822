using Calx.Chemistry.Formulas;

namespace Calx.Engine.Tests.Chemistry.Formulas;

/// <summary>Atoms of random formulas, nested and with several parts, beside periodictable (computed/compositions.csv; the
/// script beside it says what had to be rewritten for the library).</summary>
public sealed class CompositionPeerTests
{
    [Fact]
    public void Another_tool_counts_the_same_atoms_in_300_random_formulas()
    {
        string[][] rows = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "computed", "compositions.csv"))
            .Where(line => line[0] != '#').Skip(1).Select(line => line.Split(','))];
        Assert.Equal(300, rows.Length);
        Assert.All(rows, row => Assert.Equal(
            row[1],
            string.Join(' ', Formula.Parse(row[0]).Value.Composition
                .Select(atoms => FormattableString.Invariant($"{atoms.Element}:{atoms.Count}"))
                .Order(StringComparer.Ordinal))));
    }
}
