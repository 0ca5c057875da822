using System.Runtime.InteropServices;
using System.Text;

namespace Calx.App.Output;

/// <summary>
/// What a run of a command can reach: where answers and messages go, the current folder, and whether the person has
/// pressed Ctrl-C. Commands use nothing else of the process, so that tests run them side by side.
/// </summary>
public sealed class Surroundings : IDisposable
{
    private readonly CancellationTokenSource cancellation = new();
    private readonly bool isProcess;
    private PosixSignalRegistration? interrupt;
    private PosixSignalRegistration? termination;

    public Surroundings(TextWriter output, TextWriter error, string currentFolder)
        : this(output, error, currentFolder, isProcess: false)
    {
    }

    private Surroundings(TextWriter output, TextWriter error, string currentFolder, bool isProcess)
    {
        Output = output;
        Error = error;
        CurrentFolder = currentFolder;
        this.isProcess = isProcess;
    }

    /// <summary>What day it is, for what is printed.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Answers: text for a person, or one JSON document.</summary>
    public TextWriter Output { get; }

    /// <summary>Messages and faults.</summary>
    public TextWriter Error { get; }

    /// <summary>Paths that a person writes are relative to this folder.</summary>
    public string CurrentFolder { get; }

    /// <summary>Where records and practicals of one's own stand unless a folder is named.</summary>
    public string UsualDataFolder { get; init; } = Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify), "calx");

    /// <summary>The data folder that a person named, or the usual one.</summary>
    public string DataFolder(string? named) => named is null ? UsualDataFolder : FullPath(named);

    /// <summary>The process's own streams, UTF-8 whatever the terminal's language.</summary>
    public static Surroundings OfProcess()
    {
        if (OperatingSystem.IsWindows() && !Console.IsOutputRedirected)
        {
            Console.OutputEncoding = Encoding.UTF8;
        }

        return new Surroundings(
            Writer(Console.OpenStandardOutput(), flushAtOnce: false),
            Writer(Console.OpenStandardError(), flushAtOnce: true),
            Environment.CurrentDirectory,
            isProcess: true);
    }

    /// <summary>The full path of what a person wrote.</summary>
    public string FullPath(string path) => Path.GetFullPath(path, CurrentFolder);

    /// <summary>
    /// Signalled by Ctrl-C. Asking for it takes Ctrl-C over from the runtime, so only work that leaves files or lasts
    /// does.
    /// </summary>
    public CancellationToken Cancellation()
    {
        if (isProcess)
        {
            interrupt ??= PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
            termination ??= PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        }

        return cancellation.Token;
    }

    /// <summary>Says on a terminal, and nowhere else, what is being done, in place of what it said before; nothing clears it.</summary>
    public void Progress(string what)
    {
        if (isProcess && !Console.IsErrorRedirected)
        {
            Error.Write($"\r{what}\u001b[K");
        }
    }

    /// <summary>Whether a person sits before it: commands that would wait for one do not where none does.</summary>
    public bool HasPerson => Keyboard is not null || (isProcess && !Console.IsOutputRedirected && !Console.IsInputRedirected);

    /// <summary>What a person types where it is not the terminal's own keyboard; null for that one.</summary>
    public TextReader? Keyboard { get; init; }

    /// <summary>Asks a question and returns the line that is typed; null where nobody is there, or nothing more comes.</summary>
    public string? Ask(string question)
    {
        if (!HasPerson)
        {
            return null;
        }

        Error.Write(question);
        return (Keyboard ?? Console.In).ReadLine();
    }

    /// <summary>Asks for a secret, which does not show while it is typed; null where nobody is there.</summary>
    public string? AskUnseen(string question)
    {
        if (!HasPerson)
        {
            return null;
        }

        Error.Write(question);
        var typed = new StringBuilder();
        while (Console.ReadKey(intercept: true) is { Key: not ConsoleKey.Enter } key)
        {
            if (key.Key == ConsoleKey.Backspace)
            {
                typed.Length = Math.Max(0, typed.Length - 1);
            }
            else if (!char.IsControl(key.KeyChar))
            {
                typed.Append(key.KeyChar);
            }
        }

        Error.WriteLine();
        return typed.ToString();
    }

    public void Dispose()
    {
        interrupt?.Dispose();
        termination?.Dispose();
        cancellation.Dispose();
    }

    private void End(PosixSignalContext signal)
    {
        signal.Cancel = true;
        cancellation.Cancel();
    }

    private static StreamWriter Writer(Stream stream, bool flushAtOnce) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), bufferSize: 4096)
        {
            AutoFlush = flushAtOnce,
            NewLine = "\n",
        };
}
