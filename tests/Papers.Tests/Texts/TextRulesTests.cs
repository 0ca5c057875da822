using System.Reflection;
using System.Text.RegularExpressions;

namespace Calx.Papers.Tests.Texts;

/// <summary>The texts of papers, as kept for translators.</summary>
public sealed partial class TextRulesTests
{
    /// <summary>American spellings, and words that are not used of data or of a mass. 'Sulfur' and its compounds keep the f: the
    /// trade's spelling, in British schools too.</summary>
    private const string Unwanted =
        @"\b(colors?|colored|aluminum|sulph\w*|gray|liters?|meters?|centers?|fibers?|favor\w*|behavior|analyz\w*|catalyz\w*|labeled|vapor|weights?|reliab\w*|human errors?|very accurate)\b";

    /// <summary>IUPAC's own name for what it publishes: standard atomic weights. And the piece of metal that a balance is checked with.</summary>
    private static readonly string[] Named =
    [
        "MisusedWordTexts.Weight", "SheetCheckTexts.AtomicMassExpected", "WorkbookTexts.AtomicWeights", "HistoryTexts.NotChecked", "HistoryTexts.ShownExactly",
        "HistoryTexts.ShownOneLess", "HistoryTexts.ShownOneMore", "HistoryTexts.ShownLess", "HistoryTexts.ShownMore",
    ];

    [Fact]
    public void Every_text_is_used()
    {
        foreach (string library in Libraries)
        {
            HashSet<int> called = Compiled.Called(library);
            Assert.All(
                Every().Where(x => x.Topic.Library == library),
                x => Assert.True(called.Contains(MethodOf(x.Topic, x.Text.Key).MetadataToken), $"{x.Topic.Name}.{x.Text.Key} is used nowhere."));
        }
    }

    [Fact]
    public void Comment_and_text_have_the_same_places()
    {
        foreach ((TextTopic topic, KeptText text) in Every())
        {
            string[] inText = [.. Place().Matches(text.Value).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal)];
            string[] inComment = [.. NamedPlace().Matches(text.Comment).Select(m => m.Groups["place"].Value)];
            string[] names = [.. NamedPlace().Matches(text.Comment).Select(m => m.Groups["name"].Value)];
            Assert.True(inText.SequenceEqual(inComment), $"{topic.Name}.{text.Key}: the text has {string.Join(' ', inText)}, the comment names {string.Join(' ', inComment)}.");
            Assert.Equal(Enumerable.Range(0, inText.Length).Select(i => FormattableString.Invariant($"{{{i}}}")), inText);
            Assert.Equal(names, MethodOf(topic, text.Key).GetParameters().Select(p => p.Name));
            Assert.DoesNotMatch(@"[{}]", Place().Replace(text.Value, ""));
        }
    }

    [Fact]
    public void A_comment_says_where_each_text_stands() =>
        Assert.All(Every(), x => Assert.Matches(@"^[A-Z].{6,}[.?!]$", x.Text.Comment));

    [Fact]
    public void No_text_begins_or_ends_with_a_blank_or_is_empty() =>
        Assert.All(Every(), x => Assert.Matches(@"^\S([\s\S]*\S)?$", x.Text.Value));

    [Fact]
    public void Keys_are_sorted_into_topics_without_doubles() =>
        Assert.All(TextTopic.All, t => Assert.Equal(t.Texts.Count, t.Texts.DistinctBy(x => x.Key).Count()));

    [Fact]
    public void Texts_are_British_and_call_a_mass_a_mass() =>
        Assert.All(
            Every().Where(x => !Named.Contains($"{x.Topic.Name}.{x.Text.Key}")),
            x => Assert.False(
                Regex.IsMatch(x.Text.Value, Unwanted, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant), $"{x.Topic.Name}.{x.Text.Key}: {x.Text.Value}"));

    [Fact]
    public void Each_topic_is_in_its_library() => Assert.All(Libraries, library => Assert.Equal(
        TextTopic.All.Where(t => t.Library == library).Select(t => $"Calx.{library}.Texts.{t.Name}.resources"),
        Compiled.Library(library).GetManifestResourceNames().Where(n => Regex.IsMatch(n, @"^Calx\.\w+\.Texts\.\w+\.resources\z")).Order(StringComparer.Ordinal)));

    private static readonly string[] Libraries = [TextTopic.Papers, TextTopic.Engine];

    private static IEnumerable<(TextTopic Topic, KeptText Text)> Every() => TextTopic.All.SelectMany(t => t.Texts.Select(x => (t, x)));

    private static MethodInfo MethodOf(TextTopic topic, string key)
    {
        Type type = Compiled.Types(topic.Library).Single(t => t.FullName == $"Calx.{topic.Library}.Texts.{topic.Name}");
        return type.GetMethod(key) ?? type.GetProperty(key)!.GetMethod!;
    }

    [GeneratedRegex(@"\{\d+\}", RegexOptions.CultureInvariant)]
    private static partial Regex Place();

    [GeneratedRegex(@"(?<place>\{\d+\}) (?<name>[a-z][A-Za-z]*)", RegexOptions.CultureInvariant)]
    private static partial Regex NamedPlace();
}
