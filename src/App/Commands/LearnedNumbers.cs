using System.CommandLine;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Output;
using Calx.App.Serving;
using Calx.Practicals.Definition;

namespace Calx.App.Commands;

/// <summary>Looks up in the records which learned numbers a command takes.</summary>
internal sealed class LearnedNumbers(LearnedOptions options, ParseResult result, string command)
{
    /// <summary>The data folder, in which practicals of one's own stand too; null for the usual one.</summary>
    public string? Data => result.GetValue(options.Records.Data);

    /// <summary>Finds them.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="surroundings">Where trouble is told.</param>
    /// <param name="numbers">The numbers; null where none were asked for, or none accepted.</param>
    /// <returns>The exit code.</returns>
    public int Find(Practical practical, Surroundings surroundings, out AcceptedNumbers? numbers)
    {
        numbers = null;
        string? className = result.GetValue(options.ForClass);
        if (!result.GetValue(options.Learned))
        {
            if (className is null && !options.Records.IsElsewhere(result))
            {
                return ExitCode.Done;
            }

            surroundings.Error.WriteLine($"calx {command}: a database, school and class are asked only for learned numbers; add --learned, or leave them out");
            return ExitCode.BadInput;
        }

        if (options.Records.Options(result, command, surroundings) is not ServeOptions records)
        {
            return ExitCode.BadInput;
        }

        if (RecordsChoice.Missing(records, command) is string missing)
        {
            surroundings.Error.WriteLine(missing);
            return ExitCode.BadInput;
        }

        AcceptedNumbers? found = null;
        int code = RecordsChoice.Open(records, command, surroundings, async (store, cancellation) =>
        {
            found = AcceptedNumbers.InForce(practical, await store.Decisions(practical.Id, cancellation), className ?? "");
            return ExitCode.Done;
        }).GetAwaiter().GetResult();
        numbers = found;
        if (code == ExitCode.Done && found is null)
        {
            surroundings.Error.WriteLine(FormattableString.Invariant(
                $"calx {command}: nothing was accepted yet for version {practical.Version} of {practical.Id}, so the file's own numbers stand; see 'calx practicals learned {practical.Id}'"));
        }

        return code;
    }
}
