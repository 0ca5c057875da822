namespace Calx.App.Tests;

/// <summary>The program as a process of its own: what only the operating system shows.</summary>
public sealed class ProcessTests
{
    [Fact]
    public async Task The_program_starts_from_any_folder_and_answers_in_UTF8_whatever_the_language()
    {
        ProcessRun run = await ProcessRun.OfCalx(["formula", "CuSO4.5H2O"], start =>
        {
            start.WorkingDirectory = Path.GetTempPath();
            start.Environment["LC_ALL"] = "C";
            start.Environment["LANG"] = "tr_TR.ISO-8859-9";
        });

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("CuSO₄·5H₂O", run.Output, StringComparison.Ordinal);
        Assert.Equal("", run.Error);
    }

    [Fact]
    public async Task A_formula_needs_none_of_the_large_libraries()
    {
        using var folder = TemporaryFolder.Empty();
        foreach (string file in Directory.GetFiles(AppContext.BaseDirectory))
        {
            string name = Path.GetFileName(file);
            // Without its list of dependencies the program takes what lies beside it, and finds nothing else.
            if (name.StartsWith("Calx.", StringComparison.Ordinal) && name != "Calx.App.deps.json"
                || name == "System.CommandLine.dll")
            {
                File.Copy(file, Path.Combine(folder.FullName, name));
            }
        }

        ProcessRun run = await ProcessRun.Of(
            "dotnet", [Path.Combine(folder.FullName, "Calx.App.dll"), "formula", "MgO", "--json"]);

        Assert.Equal("", run.Error);
        Assert.Equal(0, run.ExitCode);
        Assert.False(File.Exists(Path.Combine(folder.FullName, "MathNet.Numerics.dll")));
    }

    [Fact]
    public async Task A_reader_that_leaves_early_is_no_fault()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "The pipe is made by a POSIX shell.");
        string program = Path.Combine(AppContext.BaseDirectory, "Calx.App.dll");

        ProcessRun run = await ProcessRun.Of("sh", ["-c", $"dotnet '{program}' formula MgO --json | head -c 1"]);

        Assert.Equal(("{", ""), (run.Output, run.Error));
    }

    [Fact]
    public async Task A_full_disk_is_said_in_one_sentence()
    {
        Assert.SkipUnless(File.Exists("/dev/full"), "/dev/full is a device of Linux.");
        string program = Path.Combine(AppContext.BaseDirectory, "Calx.App.dll");

        ProcessRun run = await ProcessRun.Of("sh", ["-c", $"dotnet '{program}' formula MgO > /dev/full"]);

        Assert.Equal(74, run.ExitCode);
        Assert.StartsWith("calx: cannot read or write", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }
}
