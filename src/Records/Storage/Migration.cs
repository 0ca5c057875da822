using System.Globalization;
using System.Reflection;

namespace Calx.Records.Storage;

/// <summary>A numbered SQL file, embedded as <c>Sqlite/001-lessons.sql</c>.</summary>
internal sealed record Migration(long Number, string Name, string Sql)
{
    /// <summary>Those of a folder, by number from 1 without a gap.</summary>
    public static IEnumerable<Migration> Of(string folder)
    {
        Assembly assembly = typeof(Migration).Assembly;
        return assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(folder + "/", StringComparison.Ordinal) && n.EndsWith(".sql", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(n => Read(assembly, n, n[(folder.Length + 1)..^4]));
    }

    private static Migration Read(Assembly assembly, string resource, string file)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(resource)!);
        string[] parts = file.Split('-', 2);
        return new Migration(long.Parse(parts[0], CultureInfo.InvariantCulture), parts[1], reader.ReadToEnd());
    }
}
