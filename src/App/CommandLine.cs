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
        foreach (ParseError error in result.Errors)
        {
            faults.Add(error.Message);
        }

        foreach (string word in result.UnmatchedTokens)
        {
            faults.Add(UnknownWord.Sentence(word, verb));
        }

        return faults;
    }
}
