using System.CommandLine;
using Calx.App.Output;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>Which practical a person means: one that the program brings along, by id, or a file of their own.</summary>
internal static class PracticalChoice
{
    /// <summary>The option that names it.</summary>
    public static Option<string?> Create() => new("--practical")
    {
        Description = "the practical: an id from 'calx practicals', or the path of a YAML file of your own",
        HelpName = "ID",
    };

    /// <summary>Finds the practical, or tells each fault on standard error and returns null.</summary>
    public static Practical? Find(string command, string? chosen, Surroundings surroundings)
    {
        if (chosen is null)
        {
            surroundings.Error.WriteLine(
                $"calx {command}: which practical? Give --practical and one of {string.Join(", ", BuiltInPracticals.Ids)}");
            return null;
        }

        return Named(command, chosen, "--practical: ", surroundings);
    }

    /// <summary>Finds the practical by its id or its file, or tells each fault on standard error and returns null.</summary>
    public static Practical? Named(string command, string chosen, string before, Surroundings surroundings)
    {
        if (BuiltInPracticals.Find(chosen) is Practical known)
        {
            return known;
        }

        bool isFile = chosen.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || chosen.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
        if (!isFile)
        {
            surroundings.Error.WriteLine($"calx {command}: {before}{BuiltInPracticals.Unknown(chosen)}");
            return null;
        }

        return FromFile(chosen, surroundings)?.Practical;
    }

    /// <summary>Reads a practical's file, telling each fault on standard error; null where the file cannot be read.</summary>
    public static PracticalReading? FromFile(string path, Surroundings surroundings)
    {
        switch (TextFile.Read(surroundings, path, "a practical"))
        {
            case FileText.Read read:
                PracticalReading reading = PracticalReader.Read(read.Text, path);
                foreach (DefinitionFault fault in reading.Faults)
                {
                    surroundings.Error.WriteLine(fault);
                }

                return reading;
            case FileText.Unreadable unreadable:
                surroundings.Error.WriteLine(unreadable.Line);
                return null;
            default:
                throw new InvalidOperationException("No other case of a text file exists.");
        }
    }
}
