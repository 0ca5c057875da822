using System.Globalization;
using System.Text.RegularExpressions;
using Calx.App.Output;
using Calx.Practicals.Definition;

namespace Calx.App.Own;

/// <summary>
/// Saves practicals of one's own and keeps every version: the newest stands in the folder, those before it in <c>earlier</c> below it.
/// Saving changes no lesson: each keeps the text of the practical with which it was made.
/// </summary>
internal sealed partial class OwnVersions(OwnFolder folder)
{
    /// <summary>Name of the folder of the versions that were saved over.</summary>
    public const string FolderName = "earlier";

    private static readonly Lock Saving = new();

    private string EarlierFolder => Path.Combine(folder.Path, FolderName);

    /// <summary>Versions that were saved over, the latest first; of one practical or of all.</summary>
    public IReadOnlyList<OwnVersion> Earlier(string? id)
    {
        if (!Directory.Exists(EarlierFolder))
        {
            return [];
        }

        return
        [
            .. Directory.EnumerateFiles(EarlierFolder, "*.yaml").Select(Of).OfType<OwnVersion>().Where(v => id is null || v.Id == id)
                .OrderBy(v => v.Id, StringComparer.Ordinal).ThenByDescending(v => v.Number),
        ];
    }

    /// <summary>The text of a version: the newest, or one that was saved over; null where there is none.</summary>
    public string? Text(string id, int? version)
    {
        OwnFile? now = folder.Candidates(id).FirstOrDefault();
        return now is not null && (version is null || now.Practical?.Version == version)
            ? OwnFolder.TryRead(Path.Combine(folder.Path, now.Name))
            : Earlier(id).FirstOrDefault(v => v.Number == version) is OwnVersion earlier ? OwnFolder.TryRead(earlier.Path) : null;
    }

    /// <summary>Saves a text as the newest version. Where another version is there, it goes to the earlier ones, and the version that the
    /// text says is raised above all of them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="edited">The practical that is edited: only that one gets another version. Null for a new one.</param>
    /// <param name="cancellation">Gives the work up.</param>
    public SaveResult Save(string text, string? edited, CancellationToken cancellation)
    {
        PracticalReading reading = PracticalReader.Read(text, "practical.yaml");
        if (reading.Practical is not Practical practical)
        {
            return new SaveResult.Refused("The file has faults that keep it from being a practical; put them right first.");
        }

        if (BuiltInPracticals.Find(practical.Id) is not null)
        {
            return new SaveResult.Refused($"The program brings along a practical '{practical.Id}'. Give yours another id, in the line 'practical:'.");
        }

        try
        {
            lock (Saving)
            {
                return Save(practical, text, edited, cancellation);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new SaveResult.Refused($"It could not be written into {folder.Path} ({NewFile.ReasonOf(failure)}).");
        }
    }

    private SaveResult Save(Practical practical, string text, string? edited, CancellationToken cancellation)
    {
        OwnFile[] there = [.. folder.Candidates(practical.Id)];
        if (there.Length > 1)
        {
            return new SaveResult.Refused($"Several of your files say that they are '{practical.Id}': {string.Join(", ", there.Select(f => f.Name))}. Give all but one another id first.");
        }

        string path = Path.Combine(folder.Path, there.Length == 1 ? there[0].Name : $"{practical.Id}.yaml");
        string? was = OwnFolder.TryRead(path);
        if (was == text)
        {
            return new SaveResult.Saved(practical.Id, practical.Version);
        }

        if (edited != practical.Id && (there.Length == 1 || Path.Exists(path)))
        {
            return new SaveResult.Refused(there.Length == 1
                ? $"You have a practical '{practical.Id}' already: edit it, or give another short name."
                : $"Among your practicals there is another file {Path.GetFileName(path)} already: give this one another short name.");
        }

        int version = practical.Version;
        Directory.CreateDirectory(folder.Path);
        if (was is not null && there is [{ Practical: Practical before }])
        {
            int last = Earlier(practical.Id).Select(v => v.Number).Append(before.Version).Max();
            version = Math.Max(version, last + 1);
            text = VersionLine().Replace(text, m => m.Groups[1].Value + version.ToString(CultureInfo.InvariantCulture), 1);
            if (PracticalReader.Read(text, path).Practical?.Version != version)
            {
                return new SaveResult.Refused(string.Create(
                    CultureInfo.InvariantCulture, $"Write 'version: {version}' on a line of its own: the version before is number {last}, and stays."));
            }

            Directory.CreateDirectory(EarlierFolder);
            NewFile.Beside(Path.Combine(EarlierFolder, string.Create(CultureInfo.InvariantCulture, $"{practical.Id}-v{before.Version}.yaml")), was, cancellation);
        }

        NewFile.Replace(path, text, cancellation);
        return new SaveResult.Saved(practical.Id, version);
    }

    private static OwnVersion? Of(string path)
    {
        Match name = EarlierName().Match(Path.GetFileName(path));
        return name.Success && int.TryParse(name.Groups[2].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            ? new OwnVersion(name.Groups[1].Value, number, path) : null;
    }

    [GeneratedRegex(@"^(version:[ ]*)\d+", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex VersionLine();

    [GeneratedRegex(@"^([A-Za-z][A-Za-z0-9-]{0,60})-v(\d{1,9})(?:-\d+)?\.yaml\z", RegexOptions.CultureInvariant)]
    private static partial Regex EarlierName();
}
