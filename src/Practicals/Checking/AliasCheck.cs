using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A heading of a class's table may mean one thing only: no label and no alias stands for two.</summary>
internal static class AliasCheck
{
    public static IEnumerable<CheckFinding> Of(Practical practical, FilePlaces places)
    {
        var names = new List<Name>();
        for (int i = 0; i < practical.Readings.Count; i++)
        {
            ReadingDefinition reading = practical.Readings[i];
            Take("readings", i, $"the reading '{reading.Id}'", reading.Label, reading.Aliases);
        }

        for (int i = 0; i < practical.Columns.Count; i++)
        {
            ColumnDefinition column = practical.Columns[i];
            Take("columns", i, $"the column '{column.Id}'", column.Label, column.Aliases);
        }

        return names.GroupBy(n => Plain(n.Text), StringComparer.Ordinal).Where(g => g.Key.Length > 0 && g.Count() > 1).SelectMany(Clashes);

        void Take(string list, int at, string owner, string label, IReadOnlyList<string> aliases)
        {
            names.Add(new Name(label, owner, places.Of(list, at, "label"), IsAlias: false));
            names.AddRange(aliases.Select((alias, k) => new Name(alias, owner, places.Of(list, at, "aliases", k), IsAlias: true)));
        }
    }

    private static IEnumerable<CheckFinding> Clashes(IEnumerable<Name> same)
    {
        Name[] all = [.. same];
        foreach (Name later in all.Skip(1))
        {
            if (later.Owner != all[0].Owner)
            {
                string what = later.IsAlias ? "alias" : "label";
                yield return CheckFinding.At(
                    later.At,
                    FormattableString.Invariant($"the {what} '{later.Text}' means {all[0].Owner} already, on line {Math.Max(1, all[0].At.Line)}"),
                    "a heading means one thing: take it out of one of them");
            }
            else if (later.IsAlias && all[0].IsAlias)
            {
                yield return CheckFinding.At(later.At, $"the alias '{later.Text}' stands twice for {later.Owner}", "take one of them out");
            }
        }
    }

    /// <summary>Capitals and spaces make no other heading.</summary>
    private static string Plain(string text) => string.Join(' ', text.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private sealed record Name(string Text, string Owner, FilePosition At, bool IsAlias);
}
