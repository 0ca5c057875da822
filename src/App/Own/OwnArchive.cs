using Calx.Practicals.Definition;
using Calx.Records.Archive;

namespace Calx.App.Own;

/// <summary>A teacher's own practicals on their way into an export and out of one.</summary>
internal sealed class OwnArchive(string dataFolder)
{
    private readonly OwnFolder folder = OwnFolder.In(dataFolder);

    /// <summary>The files that go with an export: all, or those of one practical; earlier versions too.</summary>
    public IReadOnlyList<PracticalFile> Files(string? practical = null)
    {
        var files = new List<PracticalFile>();
        foreach (OwnFile file in folder.All().Where(f => practical is null || f.Id == practical))
        {
            if (OwnFolder.TryRead(Path.Combine(folder.Path, file.Name)) is string text)
            {
                files.Add(new PracticalFile(file.Name, text));
            }
        }

        foreach (OwnVersion version in new OwnVersions(folder).Earlier(practical))
        {
            if (OwnFolder.TryRead(version.Path) is string text)
            {
                files.Add(new PracticalFile($"{OwnVersions.FolderName}/{Path.GetFileName(version.Path)}", text));
            }
        }

        return files;
    }

    /// <summary>Takes in what an export holds of them. A file that is there already stays as it is.</summary>
    /// <param name="zip">The export.</param>
    /// <param name="taken">What became of the records in it.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<ImportResult.Taken> TakeIn(Stream zip, ImportResult.Taken taken, CancellationToken cancellation)
    {
        int added = taken.Added;
        int known = taken.Known;
        var refused = new List<string>(taken.Refused);
        foreach (PracticalFile file in await PracticalFiles.Read(zip, cancellation))
        {
            string path = Path.Combine(folder.Path, Path.Combine(file.Name.Split('/')));
            if (OwnFolder.TryRead(path) is string there)
            {
                known += there == file.Text ? 1 : 0;
                if (there != file.Text)
                {
                    refused.Add($"Your practical {file.Name} is another than that of the export, and stays as it is.");
                }
            }
            else if (PracticalReader.Read(file.Text, file.Name).Practical is not Practical practical)
            {
                refused.Add($"{file.Name} is no practical that this program can read.");
            }
            else if (BuiltInPracticals.Find(practical.Id) is not null || (!file.Name.Contains('/', StringComparison.Ordinal) && folder.FilesCalled(practical.Id).Any()))
            {
                refused.Add($"{file.Name}: there is a practical '{practical.Id}' already, and it stays as it is.");
            }
            else
            {
                Write(path, file.Text, refused, ref added);
            }
        }

        return taken with { Added = added, Known = known, Refused = refused };
    }

    private static void Write(string path, string text, List<string> refused, ref int added)
    {
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
            added++;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            refused.Add($"{Path.GetFileName(path)} could not be written ({failure.Message}).");
        }
    }
}
