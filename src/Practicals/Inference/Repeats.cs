using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference;

/// <summary>How often the repeated step was done, as the ids of the weighings tell.</summary>
internal static class Repeats
{
    /// <summary>The largest number behind an id: 1 for <c>after</c>, 3 where there is an <c>after3</c>.</summary>
    public static int Implied(Practical practical, IEnumerable<string> ids)
    {
        string[] known = [.. practical.Readings.Select(r => r.Id), .. practical.Columns.Select(c => c.Id)];
        int most = 1;
        foreach (string id in ids)
        {
            string? bare = Array.Find(known, k => id.StartsWith(k, StringComparison.Ordinal)
                && int.TryParse(id.AsSpan(k.Length), NumberStyles.None, CultureInfo.InvariantCulture, out _));
            if (bare is not null)
            {
                most = Math.Max(most, int.Parse(id.AsSpan(bare.Length), NumberStyles.None, CultureInfo.InvariantCulture));
            }
        }

        return most;
    }
}
