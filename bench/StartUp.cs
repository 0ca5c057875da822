using System.Diagnostics;
using System.Globalization;

namespace Calx.Bench;

/// <summary>
/// Processor time of a whole run of the command line, beside that of a program that does nothing. It is time on the
/// processor and no time of the clock, so that another load on the machine changes it little.
/// </summary>
internal static class StartUp
{
    /// <summary>What a run may take over the runtime's own start.</summary>
    private const double MostOverInSeconds = 0.15;

    private const int Runs = 21;

    /// <summary>Prints the medians; 1 where the bound is passed.</summary>
    public static int Measure()
    {
        string home = Home();
        string empty = Path.Combine(home, "bench/Empty/bin/Release/net10.0/Calx.Empty.dll");
        RunOnce("dotnet", home, "build", "bench/Empty", "-c", "Release", "-v", "q");
        string calx = Path.Combine(home, OperatingSystem.IsWindows() ? "calx.cmd" : "calx");
        RunOnce(calx, home, "formula", "MgO");
        double start = Median("dotnet", home, empty);
        double formula = Median(calx, home, "formula", "MgO");
        double equation = Median(calx, home, "equation", "Mg + O2 -> MgO");
        Print("runtime alone", start);
        Print("calx formula MgO", formula);
        Print("calx equation 'Mg + O2 -> MgO'", equation);
        Print($"formula over the runtime (at most {MostOverInSeconds.ToString(CultureInfo.InvariantCulture)})", formula - start);
        return formula - start <= MostOverInSeconds ? 0 : 1;
    }

    private static void Print(string what, double seconds) =>
        Console.WriteLine($"{what,-50} {seconds.ToString("F3", CultureInfo.InvariantCulture)} s");

    private static double Median(string program, string folder, params string[] words)
    {
        double[] seconds = new double[Runs];
        for (int i = 0; i < Runs; i++)
        {
            seconds[i] = RunOnce(program, folder, words);
        }

        Array.Sort(seconds);
        return seconds[Runs / 2];
    }

    /// <summary>Processor time of the process in seconds, the shell script before the program included.</summary>
    private static double RunOnce(string program, string folder, params string[] words)
    {
        var start = new ProcessStartInfo(program, words)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
        };
        double before = ChildrenTime.InSeconds();
        using Process process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', words)} ended with {process.ExitCode}.");
        }

        return ChildrenTime.InSeconds() - before;
    }

    private static string Home()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Calx.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Run this from a checkout.");
        }

        return folder;
    }
}
