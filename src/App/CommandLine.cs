using System.CommandLine;
using System.CommandLine.Parsing;
using Calx.App.Commands;
using Calx.App.Output;

namespace Calx.App;

/// <summary>From the words of the command line to the command that runs, and from whatever happens to an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line and returns its <see cref="ExitCode"/>; never throws.</summary>
    public static int Run(IReadOnlyList<string> words, Surroundings surroundings)
    {
        try
        {
            int code = Dispatch(words, surroundings);
            surroundings.Output.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            return ExitCode.Interrupted;
        }
        catch (Exception mistake)
        {
            return Guard.Report(mistake, words, surroundings);
        }
    }

    private static int Dispatch(IReadOnlyList<string> words, Surroundings surroundings)
    {
        Verb root = AllCommands.Create();
        var configuration = new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false };
        ParseResult result = root.Parse(words, configuration);
        var verb = (Verb)result.CommandResult.Command;
        if (result.GetValue(verb.Help))
        {
            HelpPage.Write(verb, surroundings.Output);
            return ExitCode.Done;
        }

        List<string> faults = Faults(verb, result);
        if (faults.Count == 0)
        {
            return verb.Run(result, surroundings);
        }

        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"{HelpPage.FullName(verb)}: {fault}");
        }

        surroundings.Error.WriteLine($"See {HelpPage.FullName(verb)} --help.");
        return ExitCode.BadInput;
    }

    private static List<string> Faults(Verb verb, ParseResult result)
    {
        var faults = new List<string>();
        OptionResult[] options = [.. result.CommandResult.Children.OfType<OptionResult>()];
        OptionResult[] wrong = [.. options.Where(o => OptionFault(o, verb) is not null)];
        faults.AddRange(wrong.Select(o => OptionFault(o, verb)!));
        foreach (ParseError error in result.Errors.Where(e => !wrong.Contains(e.SymbolResult)))
        {
            faults.Add(error.Message);
        }

        foreach (string word in result.UnmatchedTokens)
        {
            faults.Add(UnknownWord.Sentence(word, verb));
        }

        return faults;
    }

    /// <summary>A value left out, so that the next option would be taken for it, or given twice; null where neither is so.</summary>
    private static string? OptionFault(OptionResult option, Verb verb)
    {
        bool takesOne = option.Option.Arity.MinimumNumberOfValues > 0;
        if (takesOne && (option.Tokens.Count == 0 || option.Tokens.Any(t => t.Value.Length == 0 || verb.Options.Any(o => o.Name == t.Value))))
        {
            string expected = option.Option.HelpName is string name ? $"; expected {option.Option.Name} {name}" : "";
            return $"{option.Option.Name}: its value is missing{expected}";
        }

        return takesOne && option.Option.Arity.MaximumNumberOfValues == 1 && option.Tokens.Count > 1
            ? $"{option.Option.Name}: given {option.Tokens.Count} times; give it once"
            : null;
    }
}
