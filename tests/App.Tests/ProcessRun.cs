using System.Diagnostics;
using System.Text;

namespace Calx.App.Tests;

/// <summary>What a real process wrote and how it ended.</summary>
internal sealed record ProcessRun(int ExitCode, string Output, string Error)
{
    /// <summary>Runs a program to its end; <paramref name="prepare"/> may change its environment and folder.</summary>
    public static async Task<ProcessRun> Of(string program, string[] words, Action<ProcessStartInfo>? prepare = null)
    {
        var start = new ProcessStartInfo(program, words)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            RedirectStandardInput = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        prepare?.Invoke(start);
        using Process process = Process.Start(start)!;
        process.StandardInput.Close();
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new ProcessRun(process.ExitCode, await output, await error);
    }

    /// <summary>Runs the built program itself, the one beside the tests.</summary>
    public static Task<ProcessRun> OfCalx(string[] words, Action<ProcessStartInfo>? prepare = null) =>
        Of("dotnet", [Path.Combine(AppContext.BaseDirectory, "Calx.App.dll"), .. words], prepare);
}
