using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Calx.Practicals.Definition.Source;

/// <summary>
/// Turns the text of a file into nodes with positions. Of YAML only what a person needs is read: keys, lists, texts and
/// numbers. Anchors, aliases, tags and second documents are faults, so that nothing in a file can grow when it is read.
/// </summary>
internal sealed partial class FileTree
{
    /// <summary>A practical's file is some 15 kB; a mebibyte is far beyond any, and still read at once.</summary>
    public const int LongestText = 1 << 20;

    /// <summary>The format nests thirteen deep at most (what is in a crucible on a triangle on a tripod on a mat, each in a
    /// list), so fourteen leaves room.</summary>
    public const int Deepest = 14;

    /// <summary>The longest list of a practical has some thirty entries; the bound keeps suggestions for thousands of
    /// unknown words from costing the product of their numbers.</summary>
    public const int MostEntries = 200;

    /// <summary>What trips up whoever writes such a file for the first time. The parser stumbles somewhere behind it, so that its own
    /// words seldom tell which it was.</summary>
    private const string UsualThree =
        "look on this line and just above it: an apostrophe inside '...' is written twice; a text with a colon and a space, or with #, needs quotes; division is /, not ':'";

    private readonly FaultList faults;
    private readonly Stack<OpenNode> open = new();
    private FileNode? root;

    private FileTree(FaultList faults) => this.faults = faults;

    /// <summary>The file's root, or null where its text cannot be read as YAML at all; faults are noted.</summary>
    public static FileNode? Read(string text, FaultList faults)
    {
        if (Refusal(text) is { } refusal)
        {
            faults.Add(refusal.At, refusal.Reason);
            return null;
        }

        return new FileTree(faults).Build(text);
    }

    private static (FilePosition At, string Reason)? Refusal(string text)
    {
        if (text.Length > LongestText)
        {
            return (default, "the file is larger than 1 MiB, which no practical's file is");
        }

        int control = text.AsSpan().IndexOfAnyInRange('\0', '\b');
        return string.IsNullOrWhiteSpace(text) ? (default, "the file is empty; a practical was expected, starting with 'practical: its-id'")
            : control >= 0 ? (PositionOf(text, control), "this is no text file: it holds a control character")
            : null;
    }

    private static FilePosition PositionOf(string text, int index)
    {
        ReadOnlySpan<char> before = text.AsSpan(0, index);
        return new FilePosition(before.Count('\n') + 1, index - before.LastIndexOf('\n'));
    }

    private FileNode? Build(string text)
    {
        var parser = new Parser(new Scanner(new StringReader(text), skipComments: true));
        try
        {
            while (parser.MoveNext())
            {
                if (!Take(parser.Current!))
                {
                    return null;
                }
            }
        }
        catch (YamlException fault)
        {
            int tab = TabInIndentation().Match(text) is { Success: true } found ? found.Index + found.Length - 1 : -1;
            if (tab >= 0)
            {
                faults.Add(PositionOf(text, tab), "lines are indented with spaces, and this is a tab; put spaces in its place, as many as the line above has");
            }
            else if (Indentation.At(text, At(fault.Start).Line) is (FilePosition at, string reason))
            {
                faults.Add(at, reason);
            }
            else
            {
                faults.Add(At(fault.Start), $"this is not YAML: {Plainly(fault.Message)}; {UsualThree}");
            }

            return null;
        }
        catch (InvalidOperationException)
        {
            // The parser gives no position for some brackets that are never closed; the last node read is the nearest.
            faults.Add(open.TryPeek(out OpenNode? last) ? last.At : default, $"this is not YAML: a bracket is not closed; {UsualThree}");
            return null;
        }

        return root;
    }

    /// <summary>Takes one event; false where reading on makes no sense.</summary>
    private bool Take(ParsingEvent happened)
    {
        switch (happened)
        {
            case Scalar scalar:
                Refuse(scalar);
                return Place(new ScalarNode(scalar.Value, scalar.Style == ScalarStyle.Plain, At(scalar.Start)));
            case AnchorAlias alias:
                faults.Add(At(alias.Start), "an alias (*) is not read; write out what is meant");
                return Place(new UnreadableNode(At(alias.Start)));
            case MappingStart or SequenceStart:
                Refuse((NodeEvent)happened);
                return Open(happened);
            case MappingEnd or SequenceEnd:
                return Place(open.Pop().Close(faults));
            case DocumentStart second when root is not null:
                faults.Add(At(second.Start), "a second document starts here; a file holds one practical");
                return false;
            default:
                return true;
        }
    }

    private void Refuse(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            faults.Add(At(node.Start), "an anchor (&) is not read; write out what is meant");
        }

        if (!node.Tag.IsEmpty)
        {
            faults.Add(At(node.Start), "a tag (!) is not read; write the value alone");
        }
    }

    private bool Open(ParsingEvent start)
    {
        if (open.Count == Deepest)
        {
            faults.Add(At(start.Start), "this is nested deeper than anything in a practical");
            return false;
        }

        open.Push(new OpenNode(isMap: start is MappingStart, At(start.Start)));
        return true;
    }

    private bool Place(FileNode node)
    {
        if (!open.TryPeek(out OpenNode? around))
        {
            root = node;
            return true;
        }

        around.Add(node);
        bool fits = around.Count <= MostEntries;
        if (!fits)
        {
            faults.Add(node.At, $"there are more than {MostEntries} entries here, which no practical needs");
        }

        return fits;
    }

    private static FilePosition At(in Mark mark) => new(checked((int)mark.Line), checked((int)mark.Column));

    [GeneratedRegex(@"^ *\t", RegexOptions.Multiline)]
    private static partial Regex TabInIndentation();

    // Its messages are sentences of several parts; the first says what is wrong.
    private static string Plainly(string message)
    {
        string first = message.Split('\n')[0].Trim().TrimEnd('.');
        first = string.Join(' ', first.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return first.Length == 0 ? "it cannot be read here" : char.ToLowerInvariant(first[0]) + first[1..];
    }
}
