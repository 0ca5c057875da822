using System.Collections.Concurrent;
using System.Text.RegularExpressions;
using Calx.Practicals.Definition;

namespace Calx.App.Own;

/// <summary>
/// A teacher's own practicals: the YAML files (<c>.yaml</c> or <c>.yml</c>) in the folder <c>practicals</c> of the data folder. A file is read again when it has
/// changed; versions that were saved over stand in <c>earlier</c> beside them.
/// </summary>
internal sealed partial class OwnFolder
{
    /// <summary>Bytes of a practical's file; those of the program have 20 to 40 thousand.</summary>
    private const long LargestFile = 1_000_000;

    private const int MostFiles = 200;

    private readonly ConcurrentDictionary<string, Known> read = new(StringComparer.Ordinal);

    private OwnFolder(string path) => Path = path;

    /// <summary>Its path.</summary>
    public string Path { get; }

    /// <summary>Whether there is one.</summary>
    public bool IsThere => Directory.Exists(Path);

    /// <summary>That of a data folder.</summary>
    public static OwnFolder In(string dataFolder) => new(System.IO.Path.Combine(dataFolder, "practicals"));

    /// <summary>All files, by name. One that takes an id which the program or another file has is told, and is no practical.</summary>
    public IReadOnlyList<OwnFile> All()
    {
        OwnFile[] files = [.. Files().Select(Of)];
        return [.. files.Select(f => f with { Practical = Clash(f, files) is null ? f.Practical : null, Faults = Clash(f, files) is string clash ? [clash] : f.Faults })];
    }

    /// <summary>The practical with an id, or null.</summary>
    public Practical? Find(string id) => All().Select(f => f.Practical).FirstOrDefault(p => p?.Id == id);

    /// <summary>Files that may be the practical with an id: they say so, or are called so.</summary>
    public IEnumerable<OwnFile> Candidates(string id) => FilesOf(id).Select(Of);

    /// <summary>Names of the files that give themselves an id.</summary>
    public IEnumerable<string> FilesCalled(string id) => FilesOf(id).Select(f => f.Name);

    /// <summary>Ids of all files.</summary>
    public IEnumerable<string> Ids => Files().Select(IdOf).OfType<string>().Distinct();

    /// <summary>The text of a file, or null where there is none that can be read.</summary>
    public static string? TryRead(string path)
    {
        try
        {
            return File.Exists(path) && new FileInfo(path).Length <= LargestFile ? File.ReadAllText(path) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string? Clash(OwnFile file, OwnFile[] all) =>
        file.Id is not string id ? null
        : BuiltInPracticals.Find(id) is not null ? $"The program brings along a practical '{id}' already. Give this one another id."
        : all.FirstOrDefault(o => o.Name != file.Name && o.Id == id) is OwnFile other ? $"{file.Name}:1:1: {file.Name} and {other.Name} both say that they are '{id}'; give one of them another id, in its line 'practical:', or take it away"
        : null;

    private IEnumerable<FileInfo> FilesOf(string id) =>
        Files().Where(f => IdOf(f) is string own ? own == id : System.IO.Path.GetFileNameWithoutExtension(f.Name) == id);

    /// <summary>Whether a file is one by its name: both endings of YAML are usual.</summary>
    public static bool IsPractical(string name) =>
        name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);

    private FileInfo[] Files()
    {
        var folder = new DirectoryInfo(Path);
        try
        {
            return folder.Exists ? [.. folder.EnumerateFiles().Where(f => IsPractical(f.Name)).OrderBy(f => f.Name, StringComparer.Ordinal).Take(MostFiles)] : [];
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>By its heading alone: a command that wants one practical does not read all the others.</summary>
    private static string? IdOf(FileInfo file)
    {
        try
        {
            return file.Length > LargestFile ? null
                : File.ReadLines(file.FullName).Select(line => Heading().Match(line)).FirstOrDefault(m => m.Success)?.Groups[1].Value;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>A file may have been taken away since the folder was looked at.</summary>
    private OwnFile Of(FileInfo file)
    {
        file.Refresh();
        if (!file.Exists)
        {
            return new OwnFile(file.Name, null, null, [$"{file.Name}: the file is not there any more"]);
        }

        if (read.TryGetValue(file.FullName, out Known? known) && known.Length == file.Length && known.Written == file.LastWriteTimeUtc)
        {
            return known.File;
        }

        OwnFile own = Read(file);
        read[file.FullName] = new Known(file.Length, file.LastWriteTimeUtc, own);
        return own;
    }

    private static OwnFile Read(FileInfo file)
    {
        if (file.Length > LargestFile)
        {
            return new OwnFile(file.Name, null, null, [$"{file.Name}: the file is too large; a practical has less than 1 MB"]);
        }

        try
        {
            PracticalReading reading = PracticalReader.Read(File.ReadAllBytes(file.FullName), file.Name);
            return new OwnFile(file.Name, reading.Practical?.Id ?? IdOf(file), reading.Practical, [.. reading.Faults.Select(f => f.ToString())]);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new OwnFile(file.Name, null, null, [$"{file.Name}: the file cannot be read ({failure.Message})"]);
        }
    }

    private sealed record Known(long Length, DateTime Written, OwnFile File);

    [GeneratedRegex(@"^practical:[ ]*['""]?([A-Za-z][A-Za-z0-9-]{0,60})['""]?[ ]*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Heading();
}
