using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Papers.Texts;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Papers.Reports;

/// <summary>What the groups of a class are called in a view: by their names, or by numbers where names are not shown. A group
/// that goes by a number already keeps it, and the word that its data are simulated; otherwise its place in the class's table
/// is its number.</summary>
internal sealed partial class GroupNames
{
    private readonly Dictionary<string, string>? numbers;
    private readonly ReportTexts texts;
    private readonly PaperLanguage language;

    private GroupNames(Dictionary<string, string>? numbers, PaperLanguage language) =>
        (this.numbers, this.language, texts) = (numbers, language, new ReportTexts(language));

    /// <summary>The names of a class's groups in a view.</summary>
    public static GroupNames Of(ClassFindings findings, ReportView view)
    {
        if (view.Names)
        {
            return new GroupNames(null, view.Language);
        }

        string[] names = [.. findings.Groups.Select(g => g.Readings.Name).Distinct(StringComparer.Ordinal)];
        string[] own = [.. names.Select(n => Number().Match(n)).Where(m => m.Success).Select(m => m.Groups[1].Value + m.Groups[2].Value)];
        bool numbered = own.Length == names.Length && own.Distinct(StringComparer.Ordinal).Count() == names.Length;
        ReportTexts texts = new(view.Language);
        return new GroupNames(names.Select((name, i) => (name, Label: numbered ? own[i] : (i + 1).ToString(CultureInfo.InvariantCulture)))
            .ToDictionary(n => n.name, n => texts.GroupNumber(n.Label), StringComparer.Ordinal), view.Language);
    }

    /// <summary>What a group, or one trial of it, is called.</summary>
    public string this[GroupFindings group] => numbers is null ? group.Name
        : group.Readings.Trial is null ? numbers[group.Readings.Name] : texts.GroupTrial(numbers[group.Readings.Name], string.Create(CultureInfo.InvariantCulture, $"{group.Readings.Trial}"));

    /// <summary>The same within a sentence, where a number alone would be taken for a quantity.</summary>
    public string InSentence(GroupFindings group) => GroupReadings.InSentence(this[group], language.Engine);

    [GeneratedRegex(@"^\s*(?:group\s*)?0*([1-9][0-9]{0,2})( \(simulated\))?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
