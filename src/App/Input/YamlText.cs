using YamlDotNet.Core;
using YamlDotNet.Core.Events;
using YamlDotNet.RepresentationModel;

namespace Calx.App.Input;

/// <summary>Reads a small YAML file into its tree, within bounds.</summary>
internal static class YamlText
{
    /// <summary>Our files nest four deep; the tree is built by recursion, which a hostile file would overrun.</summary>
    private const int DeepestNesting = 16;

    /// <summary>The mapping that the file consists of, or null after adding the fault.</summary>
    public static YamlMappingNode? Read(string text, FileFaults faults)
    {
        try
        {
            return IsWithinBounds(text, faults) ? Root(text, faults) : null;
        }
        catch (YamlException fault)
        {
            faults.Add(fault.Start, $"this is not YAML: {Reason(fault)}");
            return null;
        }
        catch (InvalidOperationException)
        {
            // What the parser throws, without a place, for a bracket that is never closed.
            faults.Add(Mark.Empty, "this is not YAML: a bracket or brace is not closed");
            return null;
        }
    }

    private static bool IsWithinBounds(string text, FileFaults faults)
    {
        var parser = new Parser(new StringReader(text));
        int depth = 0;
        while (parser.MoveNext())
        {
            depth += parser.Current!.NestingIncrease;
            if (depth > DeepestNesting)
            {
                faults.Add(parser.Current.Start, "the file is nested too deeply; expected a few keys with their values");
                return false;
            }

            if (parser.Current is AnchorAlias alias)
            {
                faults.Add(alias.Start, $"*{alias.Value}: references are not used here; write the value again");
                return false;
            }
        }

        return true;
    }

    private static YamlMappingNode? Root(string text, FileFaults faults)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        if (stream.Documents.Count == 1 && stream.Documents[0].RootNode is YamlMappingNode root)
        {
            return root;
        }

        faults.Add(Mark.Empty, "expected keys with their values, such as 'model: x + y'");
        return null;
    }

    private static string Reason(YamlException fault)
    {
        string message = (fault.InnerException?.Message ?? fault.Message).ReplaceLineEndings(" ").TrimEnd('.');
        return char.ToLowerInvariant(message[0]) + message[1..];
    }
}
