using System.CommandLine;
using Calx.App.Output;

namespace Calx.App.Commands;

/// <summary>One command of the program: its words, examples for its help page, and what it does.</summary>
internal sealed class Verb : Command
{
    public Verb(
        string name,
        string purpose,
        IReadOnlyList<Example> examples,
        Func<ParseResult, Surroundings, int> run,
        string details = "")
        : base(name, purpose)
    {
        Examples = examples;
        Run = run;
        Details = details;
        Options.Add(Help);
        // The wording of a word too many is ours: see CommandLine.
        TreatUnmatchedTokensAsErrors = false;
        // Never called: it says that a command with others below it may also stand alone.
        SetAction(_ => ExitCode.Done);
    }

    /// <summary>Asks for the help page.</summary>
    public Option<bool> Help { get; } = new("--help", "-h", "-?") { Description = "print this page" };

    /// <summary>What the help page says below the purpose; may be empty.</summary>
    public string Details { get; }

    /// <summary>Command lines for the help page, each with what it answers.</summary>
    public IReadOnlyList<Example> Examples { get; }

    /// <summary>Does the work and returns an <see cref="ExitCode"/>.</summary>
    public Func<ParseResult, Surroundings, int> Run { get; }
}
