using System.Reflection;
using System.Text;
using Calx.Practicals.Definition.Source;

namespace Calx.Practicals.Definition;

/// <summary>The practicals that Calx brings along: the files of <c>practicals/</c>, each read when first asked for.</summary>
public static class BuiltInPracticals
{
    private const string Ending = ".yaml";

    private static readonly Assembly Own = typeof(BuiltInPracticals).Assembly;

    private static readonly SortedDictionary<string, Lazy<Practical>> ById = new(
        Own.GetManifestResourceNames().Where(n => n.EndsWith(Ending, StringComparison.Ordinal))
            .ToDictionary(n => n[..^Ending.Length], n => new Lazy<Practical>(() => Load(n))),
        StringComparer.Ordinal);

    /// <summary>Ids of all practicals, in alphabetical order.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. ById.Keys];

    /// <summary>All practicals, by id in alphabetical order.</summary>
    public static IReadOnlyList<Practical> All => [.. ById.Values.Select(p => p.Value)];

    /// <summary>The practical with an id, or null where there is none.</summary>
    public static Practical? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return ById.TryGetValue(id, out Lazy<Practical>? practical) ? practical.Value : null;
    }

    /// <summary>Why an id that <see cref="Find"/> does not know is a fault, with what it may have meant.</summary>
    /// <param name="id">The id.</param>
    /// <param name="others">Ids of practicals from elsewhere that are at hand as well.</param>
    public static string Unknown(string id, IEnumerable<string>? others = null)
    {
        ArgumentNullException.ThrowIfNull(id);
        return $"there is no practical '{id}'; {NearestWord.Likely(id, [.. Ids, .. others ?? []])}";
    }

    private static Practical Load(string resource)
    {
        using Stream stream = Own.GetManifestResourceStream(resource)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        PracticalReading reading = PracticalReader.Read(reader.ReadToEnd(), resource);
        return reading.Practical ?? throw new InvalidDataException(string.Join('\n', reading.Faults));
    }
}
