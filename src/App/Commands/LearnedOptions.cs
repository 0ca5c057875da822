using System.CommandLine;
using Calx.App.Input;

namespace Calx.App.Commands;

/// <summary>The options by which a command takes numbers learned from past lessons.</summary>
internal sealed class LearnedOptions
{
    /// <summary>Whether they are taken.</summary>
    public Option<bool> Learned { get; } = new("--learned") { Description = "with the numbers that you accepted from past lessons ('calx practicals learned'), instead of the file's" };

    /// <summary>For which class.</summary>
    public Option<string?> ForClass { get; } = new("--class") { Description = "with --learned: a class whose own accepted numbers are taken where it has some", HelpName = "NAME" };

    /// <summary>Whose records.</summary>
    public RecordsChoice Records { get; } = new();

    /// <summary>All of them.</summary>
    public IEnumerable<Option> All => [Learned, ForClass, .. Records.All];
}
