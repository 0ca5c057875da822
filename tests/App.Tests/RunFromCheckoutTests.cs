namespace Calx.App.Tests;

/// <summary>
/// The script <c>calx</c> in a checkout of two files, with a stand-in for the SDK that writes down what it is asked to
/// do: when the program is built, when it is not, and what is said where the SDK is missing.
/// </summary>
public sealed class RunFromCheckoutTests : IDisposable
{
    private const string StandIn = """
        #!/bin/sh
        echo "$1" >> "$CALLS"
        case $1 in
            --version) exit "${VERSION_CODE:-0}" ;;
            publish)
                sleep "${BUILD_SECONDS:-0}"
                while [ "$1" != -o ]; do shift; done
                touch "$2/Calx.App.dll" ;;
            restore) ;;
            *) shift; echo "ran $*" ;;
        esac
        """;

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public RunFromCheckoutTests()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "calx is the script for Linux and macOS.");
        Directory.CreateDirectory(In("src/App/obj"));
        Directory.CreateDirectory(In("tools"));
        File.WriteAllText(In("src/App/One.cs"), "");
        File.WriteAllText(In("src/App/Two.cs"), "");
        File.Copy(Checkout.PathOf("calx"), In("calx"));
        foreach (string tool in (string[])["sh", "cat", "date", "find", "grep", "ls", "mkdir", "mv", "readlink", "rm",
            "sleep", "sort", "tail", "touch", "uname", "head"])
        {
            string path = File.Exists($"/usr/bin/{tool}") ? $"/usr/bin/{tool}" : $"/bin/{tool}";
            File.CreateSymbolicLink(In($"tools/{tool}"), path);
        }
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Where_the_SDK_is_missing_one_sentence_says_what_to_install()
    {
        ProcessRun run = await Calx(In("calx"), ["formula", "MgO"]);

        Assert.Equal(69, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.StartsWith("calx: install the .NET 10 SDK", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public async Task Where_the_SDK_is_too_old_one_sentence_says_what_to_install()
    {
        ProvideSdk();

        ProcessRun run = await Calx(In("calx"), [], ("VERSION_CODE", "1"));

        Assert.Equal(69, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.Contains("too old: install the .NET 10 SDK", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_builds_once_and_passes_every_word_on_as_it_was_written()
    {
        ProvideSdk();

        ProcessRun first = await Calx(In("calx"), ["formula", "a  b", "*"]);
        ProcessRun second = await Calx(In("calx"), ["formula", "MgO"]);

        Assert.Equal("ran formula a  b *\n", first.Output);
        Assert.Single(first.Error.TrimEnd('\n').Split('\n'));
        Assert.Equal("ran formula MgO\n", second.Output);
        Assert.Equal("", second.Error);
        Assert.Equal(1, Builds());
    }

    [Fact]
    public async Task It_builds_again_after_a_source_is_changed_added_or_removed_but_not_after_a_build_product_is()
    {
        ProvideSdk();
        await Calx(In("calx"), []);

        File.WriteAllText(In("src/App/obj/made.cs"), "");
        await Calx(In("calx"), []);
        Assert.Equal(1, Builds());

        File.SetLastWriteTimeUtc(In("src/App/One.cs"), DateTime.UtcNow.AddSeconds(1));
        await Calx(In("calx"), []);
        Assert.Equal(2, Builds());

        File.SetLastWriteTimeUtc(In("src/App/One.cs"), DateTime.UtcNow.AddSeconds(-10));
        File.Delete(In("src/App/Two.cs"));
        await Calx(In("calx"), []);
        Assert.Equal(3, Builds());

        File.WriteAllText(In("src/App/Three.cs"), "");
        File.SetLastWriteTimeUtc(In("src/App/Three.cs"), DateTime.UtcNow.AddDays(-1));
        await Calx(In("calx"), []);
        Assert.Equal(4, Builds());
    }

    [Fact]
    public async Task It_runs_through_a_symbolic_link_and_from_another_folder()
    {
        ProvideSdk();
        Directory.CreateDirectory(In("elsewhere"));
        File.CreateSymbolicLink(In("elsewhere/first"), "../calx");
        File.CreateSymbolicLink(In("elsewhere/second"), In("elsewhere/first"));

        ProcessRun run = await Calx(In("elsewhere/second"), ["demo"]);

        Assert.Equal("ran demo\n", run.Output);
    }

    [Fact]
    public async Task Two_calls_at_once_build_once()
    {
        ProvideSdk();

        ProcessRun[] runs = await Task.WhenAll(
            Calx(In("calx"), ["one"], ("BUILD_SECONDS", "0.3")), Calx(In("calx"), ["two"], ("BUILD_SECONDS", "0.3")));

        Assert.Equal("ran one\n", runs[0].Output);
        Assert.Equal("ran two\n", runs[1].Output);
        Assert.Equal(1, Builds());
    }

    private string In(string name) => Path.Combine(folder.FullName, name);

    private int Builds() => File.ReadAllLines(In("calls")).Count(line => line == "publish");

    private void ProvideSdk()
    {
        // A copy of a script may be run; its text is then another.
        File.Copy(Checkout.PathOf("calx"), In("tools/dotnet"));
        File.WriteAllText(In("tools/dotnet"), StandIn);
    }

    private Task<ProcessRun> Calx(string script, string[] words, params (string Name, string Value)[] environment) =>
        ProcessRun.Of(script, words, start =>
        {
            start.WorkingDirectory = Path.GetDirectoryName(script)!;
            start.Environment.Remove("DOTNET_ROOT");
            start.Environment["HOME"] = folder.FullName;
            start.Environment["PATH"] = In("tools");
            start.Environment["CALLS"] = In("calls");
            foreach ((string name, string value) in environment)
            {
                start.Environment[name] = value;
            }
        });
}
