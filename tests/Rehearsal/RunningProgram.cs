using System.Diagnostics;
using System.Net;

namespace Calx.Rehearsal;

/// <summary>
/// The real program, serving, as a process of its own. It can be ended without a warning and started again on the same port and
/// the same records, as after a power cut.
/// </summary>
public sealed class RunningProgram : IAsyncDisposable
{
    private const string OpenAt = "Calx is open at ";

    /// <summary>A busy machine starts it slowly; one that has not come by then will not come.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly ProgramStart start;
    private Process process;
    private Task<string> errors;

    private RunningProgram(ProgramStart start, Process process, Task<string> errors, IReadOnlyList<string> said, Uri address)
    {
        (this.start, this.process, this.errors) = (start, process, errors);
        (Said, Address) = (said, address);
    }

    /// <summary>Where its pages are, without a path.</summary>
    public Uri Address { get; private set; }

    /// <summary>What it said when it was ready.</summary>
    public IReadOnlyList<string> Said { get; private set; }

    /// <summary>Its process.</summary>
    public int ProcessId => process.Id;

    /// <summary>Memory that it holds now, in MB (10^6 bytes).</summary>
    public double ResidentMegabytes
    {
        get
        {
            process.Refresh();
            return process.WorkingSet64 / 1e6;
        }
    }

    /// <summary>Processor time that it has taken, in seconds.</summary>
    public double ProcessorSeconds
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime.TotalSeconds;
        }
    }

    /// <summary>Whether it still runs.</summary>
    public bool IsRunning => !process.HasExited;

    /// <summary>Starts it and waits until it says where its pages are.</summary>
    public static async Task<RunningProgram> Start(ProgramStart start)
    {
        ArgumentNullException.ThrowIfNull(start);
        (Process process, Task<string> errors, List<string> said, Uri address) = await Launch(start);
        return new RunningProgram(start, process, errors, said, address);
    }

    /// <summary>Ends it with no chance to tidy up (SIGKILL).</summary>
    public async Task Kill()
    {
        process.Kill();
        await process.WaitForExitAsync();
        await errors;
    }

    /// <summary>Starts it again on the port that it had.</summary>
    public async Task StartAgain()
    {
        process.Dispose();
        (process, errors, List<string> said, Address) = await Launch(start with { Port = Address.Port });
        Said = said;
    }

    /// <summary>What it has written as errors; complete only once it has ended.</summary>
    public async Task<string> Errors() => IsRunning ? "" : await errors;

    /// <summary>A browser-like client: it keeps cookies, says where a form came from, and follows no redirect by itself.</summary>
    public HttpClient Client() => Client(Address);

    /// <summary>The same for another address of the program.</summary>
    /// <param name="address">The address.</param>
    /// <param name="cookies">Where its cookies are kept; null for a place of its own.</param>
    public static HttpClient Client(Uri address, CookieContainer? cookies = null)
    {
        ArgumentNullException.ThrowIfNull(address);
        var client = new HttpClient(new SocketsHttpHandler { CookieContainer = cookies ?? new CookieContainer(), AllowAutoRedirect = false, UseProxy = false })
        {
            BaseAddress = address,
            Timeout = TimeSpan.FromSeconds(30),
        };
        client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
        return client;
    }

    public async ValueTask DisposeAsync()
    {
        if (IsRunning)
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        process.Dispose();
    }

    private static async Task<(Process Process, Task<string> Errors, List<string> Said, Uri Address)> Launch(ProgramStart start)
    {
        Process process = Process.Start(start.Information())!;
        process.StandardInput.Close();
        Task<string> errors = process.StandardError.ReadToEndAsync();
        var said = new List<string>();
        using var patience = new CancellationTokenSource(Patience);
        try
        {
            while (await process.StandardOutput.ReadLineAsync(patience.Token) is string line)
            {
                said.Add(line);
                if (line.StartsWith("Ctrl-C", StringComparison.Ordinal))
                {
                    string address = said.First(s => s.StartsWith(OpenAt, StringComparison.Ordinal))[OpenAt.Length..];
                    _ = process.StandardOutput.ReadToEndAsync(CancellationToken.None);
                    return (process, errors, said, new Uri(new Uri(address).GetLeftPart(UriPartial.Authority)));
                }
            }
        }
        catch (OperationCanceledException)
        {
            process.Kill();
        }

        await process.WaitForExitAsync(CancellationToken.None);
        string wrote = await errors;
        throw new InvalidOperationException(
            FormattableString.Invariant($"The program did not open its pages (exit code {process.ExitCode}): {string.Join(" | ", said)} {wrote}"));
    }
}
