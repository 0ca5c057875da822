using System.Text.RegularExpressions;
using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Definition;
using Calx.Practicals.Checking;

namespace Calx.Engine.Tests.Practicals.Checking;

/// <summary>A good file with something changed by chance: the check throws nothing, and a file that cannot be used has a fault.</summary>
public sealed partial class HostileCheckTests
{
    private static readonly int Changes = LongProofs.Cases(20, 400);

    private static readonly string[] Values = ["0", "-1", "1e300", "''", "[]", "{}", "after", "~", "{ normal: [0, 1] }", "MgO", "1 / 0", "true"];

    [Theory]
    [InlineData("magnesium-oxide", 1)]
    [InlineData("copper-sulfate-hydrate", 2)]
    [InlineData("sodium-hydrogencarbonate", 3)]
    public void A_key_deleted_doubled_or_given_another_value_never_crashes_it(string id, int seed)
    {
        string text = Files.Text(id);
        Match[] keys = Key().Matches(text).ToArray();
        var random = new Random(seed);
        for (int change = 0; change < Changes; change++)
        {
            Match key = keys[random.Next(keys.Length)];
            string made = random.Next(3) switch
            {
                0 => text.Remove(key.Index, key.Length),
                1 => text.Insert(key.Index, key.Value),
                _ => text.Remove(key.Groups[2].Index, key.Groups[2].Length).Insert(key.Groups[2].Index, Values[random.Next(Values.Length)]),
            };

            CheckedPractical found = PracticalCheck.Of(made, "f.yaml", AtomicWeights.Iupac2024);

            Assert.True(found.Practical is not null || found.Findings.Any(f => f.Kind == CheckKind.Fault), $"change {change} of {id}");
        }
    }

    [GeneratedRegex(@"([a-zA-Z]+: )([^\s,{}\[\]]+)", RegexOptions.CultureInvariant)]
    private static partial Regex Key();
}
