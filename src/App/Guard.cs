using Calx.App.Output;

namespace Calx.App;

/// <summary>The last line of defence: no stack trace reaches a person.</summary>
internal static class Guard
{
    /// <summary>Set to 1, it prints the stack trace as well, for a report of the mistake.</summary>
    public const string TraceVariable = "CALX_TRACE";

    /// <summary>One sentence for an exception that nothing else has caught, and the exit code.</summary>
    public static int Report(Exception mistake, IReadOnlyList<string> words, Surroundings surroundings)
    {
        (int code, string sentence) = mistake switch
        {
            IOException or UnauthorizedAccessException => (ExitCode.CannotWrite, $"cannot read or write: {mistake.Message}"),
            OutOfMemoryException => (ExitCode.ProgramMistake, "there is not enough memory for this"),
            _ => (ExitCode.ProgramMistake,
                $"a mistake in the program, not in your data: {mistake.GetType().Name}: {OneLine(mistake.Message)}"
                + $" Please report this sentence with the command line: calx {string.Join(' ', words)}"),
        };
        surroundings.Error.WriteLine($"calx: {sentence}");
        if (Environment.GetEnvironmentVariable(TraceVariable) == "1")
        {
            surroundings.Error.WriteLine(mistake.ToString());
        }

        return code;
    }

    private static string OneLine(string message) => message.ReplaceLineEndings(" ");
}
