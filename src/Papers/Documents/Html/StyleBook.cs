using System.Text;

namespace Calx.Papers.Documents.Html;

/// <summary>Lengths that the parts of a paper bring along, as classes of its style sheet: a page whose policy allows no style on elements
/// shows them too.</summary>
internal sealed class StyleBook
{
    private readonly List<string> declarations = [];

    /// <summary>The name of a class with some declarations; the same for the same.</summary>
    public string ClassOf(string declaration)
    {
        int known = declarations.IndexOf(declaration);
        if (known < 0)
        {
            known = declarations.Count;
            declarations.Add(declaration);
        }

        return FormattableString.Invariant($"s{known}");
    }

    /// <summary>The rules, a line each.</summary>
    public string Rules()
    {
        var rules = new StringBuilder();
        for (int i = 0; i < declarations.Count; i++)
        {
            rules.Append(System.Globalization.CultureInfo.InvariantCulture, $".s{i}{{{declarations[i]}}}\n");
        }

        return rules.ToString();
    }
}
