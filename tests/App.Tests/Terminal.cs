using Calx.App.Output;

namespace Calx.App.Tests;

/// <summary>Runs the real command line in this process and keeps what it wrote.</summary>
internal sealed class Terminal
{
    private Terminal(int exitCode, string output, string error)
    {
        ExitCode = exitCode;
        Output = output;
        Error = error;
    }

    public int ExitCode { get; }

    public string Output { get; }

    public string Error { get; }

    public static Terminal Run(params string[] words) => RunIn(AppContext.BaseDirectory, words);

    public static Terminal RunIn(string folder, params string[] words) => Typing(null, folder, words);

    /// <summary>The same with a person who types lines; null where nobody is there.</summary>
    public static Terminal Typing(string? typed, string folder, params string[] words)
    {
        using StringReader? keyboard = typed is null ? null : new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var surroundings = new Surroundings(output, error, folder)
        {
            Clock = new OneDay(),
            Keyboard = keyboard,
            UsualDataFolder = Path.Combine(folder, "no-data-folder"),
        };
        int code = CommandLine.Run(words, surroundings);
        return new Terminal(code, output.ToString(), error.ToString());
    }

    /// <summary>26 November 2026, at noon.</summary>
    private sealed class OneDay : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);
    }
}
