using System.Text.RegularExpressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Drafting;

namespace Calx.App.Tests;

/// <summary>What is written about the program: its links lead somewhere, and it speaks of the program alone.</summary>
public sealed partial class DocumentationTests
{
    private static readonly string[] NotOurs = ["bin", "obj", "artifacts", "TestResults", "BenchmarkDotNet.Artifacts", "__pycache__"];

    // Written in parts, so that this file does not hold them. Paths are those of machines on which the program was made.
    private static readonly string[] Unwanted =
        [@"\btran" + @"scripts?\b", @"\bTO" + @"DO\b", @"\bFIX" + @"ME\b", "/wo" + "rk/", "/ro" + "ot/", "/tm" + "p/", "/ho" + "me/"];

    private static readonly HashSet<string> TextEndings = new(StringComparer.OrdinalIgnoreCase)
    {
        ".cs", ".md", ".csproj", ".props", ".targets", ".slnx", ".json", ".yaml", ".yml", ".txt", ".csv", ".py", ".R", ".sh", ".cmd", ".html",
        ".css", ".js", "",
    };

    [Fact]
    public void Every_relative_link_leads_to_a_file()
    {
        string home = Checkout.PathOf("");
        string[] pages = [Checkout.PathOf("README.md"), Checkout.PathOf("CONTRIBUTING.md"),
            .. Directory.EnumerateFiles(Checkout.PathOf("docs"), "*.md", SearchOption.AllDirectories)];
        string[] broken = [.. pages.SelectMany(page => Links(page)
            .Where(link => !Leads(page, link))
            .Select(link => $"{Path.GetRelativePath(home, page)}: {link}"))];
        Assert.True(pages.Length > 10);
        Assert.Empty(broken);
    }

    [Fact]
    public void Every_page_on_a_method_is_in_the_list_of_methods()
    {
        string list = Checkout.PathOf("docs/methods/README.md");
        string[] pages = [.. Directory.EnumerateFiles(Checkout.PathOf("docs/methods"), "*.md").Select(page => Path.GetFileName(page)!)];
        Assert.Equal(pages.Where(page => page != "README.md").Order(), Links(list).Distinct().Order());
    }

    [Fact]
    public void Every_practical_is_in_the_list_of_practicals()
    {
        string list = File.ReadAllText(Checkout.PathOf("docs/guide/practicals.md"));
        Assert.All(BuiltInPracticals.Ids, id => Assert.Contains($"| `{id}` |", list, StringComparison.Ordinal));
    }

    [Fact]
    public void The_guide_to_writing_a_practical_names_every_key_of_an_answer_and_its_hazard_can_be_read()
    {
        string guide = File.ReadAllText(Checkout.PathOf("docs/guide/write-a-practical.md"));
        string table = guide[guide.IndexOf("| key | means |", StringComparison.Ordinal)..guide.IndexOf("## 2.", StringComparison.Ordinal)];
        string[] named = [.. Regex.Matches(table, @"^\| (`[^|]+) \|", RegexOptions.Multiline).SelectMany(row => row.Groups[1].Value.Split(", ")).Select(key => key.Trim('`'))];
        Assert.Equal(
            Enum.GetValues<DraftFamily>().SelectMany(DraftQuestions.Of).Select(question => question.Key).Distinct().Order(), named.Order());

        string hazard = guide.Split('\n').Single(line => line.StartsWith("  - { of: start", StringComparison.Ordinal));
        string file = Draft.Of(new Dictionary<string, string>()).Text!;
        string with = Regex.Replace(file, @"^hazards:.*$", $"hazards:\n{hazard}", RegexOptions.Multiline);
        Assert.Contains("ghs: {", hazard, StringComparison.Ordinal);
        Assert.Contains(hazard, with, StringComparison.Ordinal);
        Assert.Empty(PracticalReader.Read(with, "f.yaml").Faults);
    }

    [Fact]
    public void No_file_speaks_of_anything_but_the_program()
    {
        string home = Checkout.PathOf("");
        var unwanted = new Regex(string.Join('|', Unwanted), RegexOptions.CultureInvariant);
        string[] found = [.. Texts(home)
            .SelectMany(file => File.ReadLines(file).Select((line, i) => (file, line, Number: i + 1)))
            .Where(place => unwanted.IsMatch(place.line))
            .Select(place => $"{Path.GetRelativePath(home, place.file)}:{place.Number}: {unwanted.Match(place.line).Value}")];
        Assert.Empty(found);
    }

    private static IEnumerable<string> Texts(string folder) =>
        Directory.EnumerateFiles(folder).Where(file => TextEndings.Contains(Path.GetExtension(file)) && Path.GetFileName(file) != ".git")
            .Concat(Directory.EnumerateDirectories(folder)
                .Where(inner => !NotOurs.Contains(Path.GetFileName(inner)) && Path.GetFileName(inner)[0] != '.')
                .SelectMany(Texts));

    // Code is no link: [a](b) in backquotes or in a fenced block is passed over.
    private static IEnumerable<string> Links(string page)
    {
        string text = Code().Replace(File.ReadAllText(page), "");
        return Link().Matches(text).Select(match => match.Groups[1].Value)
            .Where(link => !link.Contains("://", StringComparison.Ordinal) && link[0] != '#'
                && !link.StartsWith("mailto:", StringComparison.Ordinal));
    }

    private static bool Leads(string page, string link)
    {
        string path = Path.Combine(Path.GetDirectoryName(page)!, Uri.UnescapeDataString(link.Split('#')[0]));
        return File.Exists(path) || Directory.Exists(path);
    }

    [GeneratedRegex(@"\]\(([^)\s]+)(?:\s+""[^""]*"")?\)", RegexOptions.CultureInvariant)]
    private static partial Regex Link();

    [GeneratedRegex(@"```.*?```|`[^`\n]*`", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Code();
}
