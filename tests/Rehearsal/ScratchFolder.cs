namespace Calx.Rehearsal;

/// <summary>A folder of its own that is gone at the end.</summary>
public sealed class ScratchFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-rehearsal-");

    /// <summary>Its full path.</summary>
    public string FullName => folder.FullName;

    /// <summary>Full path of a file in it.</summary>
    public string PathOf(string name) => Path.Combine(FullName, name);

    public void Dispose() => folder.Delete(recursive: true);
}
