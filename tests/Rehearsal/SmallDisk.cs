using System.Diagnostics;

namespace Calx.Rehearsal;

/// <summary>A disk of a few megabytes, in memory, that can be filled.</summary>
public sealed class SmallDisk : IDisposable
{
    private readonly ScratchFolder folder = new();

    private SmallDisk()
    {
    }

    /// <summary>Where it is.</summary>
    public string FullName => folder.FullName;

    private string Filling => Path.Combine(FullName, "filling");

    /// <summary>Makes one, or returns null where that is not permitted.</summary>
    public static SmallDisk? Mount(int megabytes)
    {
        if (!OperatingSystem.IsLinux() || !Environment.IsPrivilegedProcess)
        {
            return null;
        }

        var disk = new SmallDisk();
        if (Run("mount", "-t", "tmpfs", "-o", FormattableString.Invariant($"size={megabytes}m"), "tmpfs", disk.FullName))
        {
            return disk;
        }

        disk.folder.Dispose();
        return null;
    }

    /// <summary>Leaves no byte free.</summary>
    public void Fill()
    {
        byte[] block = new byte[512];
        using FileStream file = File.Create(Filling, bufferSize: 1);
        try
        {
            while (true)
            {
                file.Write(block);
            }
        }
        catch (IOException)
        {
            // Full.
        }
    }

    /// <summary>Makes room again.</summary>
    public void Empty() => File.Delete(Filling);

    public void Dispose()
    {
        Run("umount", "-l", FullName);
        folder.Dispose();
    }

    private static bool Run(string program, params string[] words)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true })!;
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
