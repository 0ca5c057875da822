using System.CommandLine;
using Calx.App.Output;
using Calx.App.Own;
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

    /// <summary>The option that names the folder with practicals of one's own.</summary>
    public static Option<string?> CreateData() => new("--data")
    {
        Description = "data folder, whose folder 'practicals' holds practicals of your own; otherwise 'calx' in your own data folder",
        HelpName = "DIR",
    };

    /// <summary>Finds the practical, or tells each fault on standard error and returns null.</summary>
    public static Practical? Find(string command, string? chosen, string? data, Surroundings surroundings)
    {
        if (chosen is null)
        {
            surroundings.Error.WriteLine(
                $"calx {command}: which practical? Give --practical and one of {string.Join(", ", BuiltInPracticals.Ids)}");
            return null;
        }

        return Named(command, chosen, "--practical: ", data, surroundings);
    }

    /// <summary>Finds the practical by its id or its file, or tells each fault on standard error and returns null.</summary>
    public static Practical? Named(string command, string chosen, string before, string? data, Surroundings surroundings)
    {
        var own = OwnFolder.In(surroundings.DataFolder(data));
        if (BuiltInPracticals.Find(chosen) is Practical known)
        {
            foreach (string file in own.FilesCalled(chosen))
            {
                surroundings.Error.WriteLine($"calx {command}: {before}'{chosen}' is the program's own practical; your file {file} is not used until it has another id");
            }

            return known;
        }

        bool isFile = chosen.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || chosen.EndsWith(".yml", StringComparison.OrdinalIgnoreCase);
        return isFile ? FromFile(chosen, surroundings)?.Practical : OwnOne(command, chosen, before, own, surroundings);
    }

    private static Practical? OwnOne(string command, string chosen, string before, OwnFolder own, Surroundings surroundings)
    {
        OwnFile[] files = [.. own.Candidates(chosen)];
        if (files is [{ Practical: Practical practical }])
        {
            return practical;
        }

        foreach (string fault in files.SelectMany(f => f.Faults))
        {
            surroundings.Error.WriteLine(fault);
        }

        if (files.Length > 1)
        {
            surroundings.Error.WriteLine(
                $"calx {command}: {before}several of your files say that they are '{chosen}': {string.Join(", ", files.Select(f => f.Name))}; give all but one another id");
        }
        else if (files.Length == 0)
        {
            surroundings.Error.WriteLine($"calx {command}: {before}{BuiltInPracticals.Unknown(chosen, own.Ids)}");
        }

        return null;
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
