using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Calx.Papers.Tests.Texts;

/// <summary>Second files of a topic, for what dries or weighs a product: each text in them stands for one of the topic.</summary>
public sealed partial class MannerFileTests
{
    [Fact]
    public void Every_text_of_a_manner_takes_the_place_of_one_with_the_same_places()
    {
        string[] files = [.. Folders().SelectMany(folder => Directory.GetFiles(folder, "*Texts.*.resx"))];

        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            string[] name = Path.GetFileName(file).Split('.');
            Assert.Contains(name[1], (string[])["drying", "dryness", "product"]);
            Dictionary<string, string> plain = Texts(Path.Combine(Path.GetDirectoryName(file)!, $"{name[0]}.resx"));
            Assert.All(Texts(file), text =>
            {
                Assert.True(plain.TryGetValue(text.Key, out string? instead), $"{file}: no text '{text.Key}' in the topic.");
                Assert.Equal(Places(instead!), Places(text.Value));
                Assert.NotEqual(instead, text.Value);
            });
        }
    }

    private static string[] Places(string text) => [.. Place().Matches(text).Select(m => m.Value).Distinct().Order(StringComparer.Ordinal)];

    private static Dictionary<string, string> Texts(string path) => XDocument.Load(path).Root!.Elements("data")
        .ToDictionary(d => d.Attribute("name")!.Value, d => d.Element("value")!.Value, StringComparer.Ordinal);

    private static IEnumerable<string> Folders()
    {
        string root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Calx.slnx")))
        {
            root = Path.GetDirectoryName(root) ?? throw new DirectoryNotFoundException("The checkout was not found above the tests.");
        }

        return new[] { "src/Papers/Texts", "src/Practicals/Texts" }.Select(folder => Path.Combine(root, folder));
    }

    [GeneratedRegex(@"\{\d\}")]
    private static partial Regex Place();
}
