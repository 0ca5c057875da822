using System.Text;

namespace Calx.Practicals.Drafting;

/// <summary>The text of a file as it grows.</summary>
internal sealed class DraftText
{
    private readonly StringBuilder text = new();

    /// <summary>Adds lines as they stand, and an empty one behind them where <paramref name="last"/> says so.</summary>
    public DraftText Add(string lines, bool last = true)
    {
        text.Append(lines.ReplaceLineEndings("\n").TrimEnd()).Append('\n');
        if (last)
        {
            text.Append('\n');
        }

        return this;
    }

    /// <summary>Adds lines where something holds.</summary>
    public DraftText AddIf(bool holds, string lines, bool last = false) => holds ? Add(lines, last) : this;

    /// <summary>Adds an empty line.</summary>
    public DraftText Gap()
    {
        text.Append('\n');
        return this;
    }

    /// <summary>A text in quotes, so that no sign in it means anything to YAML.</summary>
    public static string Quoted(string words) => $"'{words.Replace("'", "''", StringComparison.Ordinal)}'";

    /// <inheritdoc/>
    public override string ToString() => text.ToString().TrimEnd('\n') + "\n";
}
