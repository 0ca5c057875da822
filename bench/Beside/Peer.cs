using System.Diagnostics;
using System.Text.Json;

namespace Calx.Bench.Beside;

/// <summary>A script of bench/peers that computes the same with a general-purpose library and prints a line of JSON.</summary>
/// <param name="Script">File name in bench/peers: .py for /usr/bin/python3, .R for Rscript.</param>
/// <param name="Arguments">What the script is to do, as its head says.</param>
internal sealed record Peer(string Script, params string[] Arguments)
{
    /// <summary>Runs the script once and reads its last line.</summary>
    /// <exception cref="InvalidOperationException">The script failed; its messages are in the exception.</exception>
    public PeerRun Run(params string[] more)
    {
        string folder = Path.Combine(AppContext.BaseDirectory, "peers");
        var start = new ProcessStartInfo(Script.EndsWith(".R", StringComparison.Ordinal) ? "Rscript" : "/usr/bin/python3")
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (string argument in (string[])[Script, .. Arguments, .. more])
        {
            start.ArgumentList.Add(argument);
        }

        using Process process = Process.Start(start) ?? throw new InvalidOperationException($"{Script} did not start.");
        Task<string> messages = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        string? line = output.Split('\n').LastOrDefault(text => text.StartsWith('{'));
        return line is null
            ? throw new InvalidOperationException($"{Script} printed no result. {messages.Result}")
            : new PeerRun(JsonDocument.Parse(line).RootElement);
    }
}
