using Calx.Measurement.Numbers;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Calx.App.Input;

/// <summary>The faults found in one YAML file, each with its line and column.</summary>
internal sealed class FileFaults(string file)
{
    private readonly List<string> lines = [];

    /// <summary>One line a fault, in the order found.</summary>
    public IReadOnlyList<string> Lines => lines;

    /// <summary>Whether the file has a fault.</summary>
    public bool Any => lines.Count > 0;

    /// <summary>A fault at a node of the file.</summary>
    public void Add(YamlNode node, string reason) => Add(node.Start, reason);

    /// <summary>A fault at a place of the file.</summary>
    public void Add(Mark place, string reason) =>
        lines.Add(Fault.Line(file, checked((int)place.Line), checked((int)place.Column), reason));

    /// <summary>A fault at a character of a text that stands in the file on one line.</summary>
    public void Add(YamlScalarNode node, TextFault fault)
    {
        // A quoted text begins one column after its node. Texts folded over several lines are placed at their start.
        bool oneLine = node.Start.Line == node.End.Line;
        int quote = node.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0;
        int offset = oneLine ? quote + fault.Span.Start : 0;
        lines.Add(Fault.Line(file, (int)node.Start.Line, (int)node.Start.Column + offset, fault.ToString()));
    }
}
