using System.Diagnostics;
using System.Net;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>The program as one file, the way a school gets it.</summary>
public sealed class PublishedFileTests
{
    [Fact]
    public async Task The_one_file_for_Linux_runs_in_a_clean_folder_with_nothing_beside_it_and_an_empty_home()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && System.Runtime.InteropServices.RuntimeInformation.OSArchitecture == System.Runtime.InteropServices.Architecture.X64, "The file is for Linux on x64.");
        using var folder = new ScratchFolder();
        await Publish(folder.FullName);
        string made = folder.PathOf("linux-x64");
        Assert.Equal(["calx"], Directory.EnumerateFileSystemEntries(made).Select(Path.GetFileName));

        using var elsewhere = new ScratchFolder();
        string home = Directory.CreateDirectory(elsewhere.PathOf("home")).FullName;
        string program = elsewhere.PathOf("calx");
        File.Move(Path.Combine(made, "calx"), program);
        var start = new ProgramStart(elsewhere.PathOf("records"))
        {
            Program = program,
            Environment = new Dictionary<string, string> { ["HOME"] = home, ["DOTNET_ROOT"] = home, ["PATH"] = "/usr/bin:/bin", ["DOTNET_BUNDLE_EXTRACT_BASE_DIR"] = "" },
        };
        await using RunningProgram running = await RunningProgram.Start(start);
        using HttpClient client = running.Client();
        foreach (string page in (string[])["/", "/practicals/magnesium-oxide", "/join"])
        {
            using HttpResponseMessage answer = await client.GetAsync(new Uri(page, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.Contains("<h1", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }
    }

    private static async Task Publish(string folder)
    {
        var start = new ProcessStartInfo("sh", ["./publish", "--out", folder, "linux-x64"])
        {
            WorkingDirectory = Path.GetDirectoryName(Checkout.PathOf("publish"))!, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        // Compiling beforehand takes minutes and changes nothing of what is proven here; the long run does it as it is delivered.
        start.Environment["CALX_PRECOMPILED"] = Environment.GetEnvironmentVariable("CALX_LONG") == "1" ? "true" : "false";
        using Process publishing = Process.Start(start)!;
        Task<string> said = publishing.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        string wrong = await publishing.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await publishing.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.SkipWhen(
            publishing.ExitCode != 0 && wrong.Contains("NU1301", StringComparison.Ordinal), "The packages with the runtime inside cannot be fetched on this machine.");
        Assert.True(publishing.ExitCode == 0, $"{await said}{wrong}");
    }
}
