namespace Calx.Papers.Spreadsheets;

/// <summary>Names by which formulas of a workbook call the molar masses. Spreadsheets do not tell capital letters from small ones in a name:
/// Co and CO get different names.</summary>
internal sealed class ConstantNames
{
    private readonly Dictionary<string, string> names = new(StringComparer.Ordinal);

    /// <summary>Names the molar masses of formula texts.</summary>
    public ConstantNames(IEnumerable<string> formulas)
    {
        var taken = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (string formula in formulas.Distinct())
        {
            string plain = $"M_{string.Concat(formula.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '_'))}";
            string name = plain;
            for (int further = 2; !taken.Add(name); further++)
            {
                name = FormattableString.Invariant($"{plain}__{further}");
            }

            names.Add(formula, name);
        }
    }

    /// <summary>The formula texts in order.</summary>
    public IReadOnlyCollection<string> Formulas => names.Keys;

    /// <summary>The name of a molar mass.</summary>
    public string Of(string formula) => names[formula];
}
