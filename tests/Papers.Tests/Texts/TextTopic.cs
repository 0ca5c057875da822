using System.Xml.Linq;

namespace Calx.Papers.Tests.Texts;

/// <summary>A topic's texts as their file has them.</summary>
/// <param name="Library">The project that says them.</param>
/// <param name="Name">The topic.</param>
/// <param name="Texts">Its texts in order.</param>
internal sealed record TextTopic(string Library, string Name, IReadOnlyList<KeptText> Texts)
{
    /// <summary>Those of papers.</summary>
    public const string Papers = "Papers";

    /// <summary>Those of the engine.</summary>
    public const string Engine = "Practicals";

    /// <summary>All topics of the checkout.</summary>
    public static IReadOnlyList<TextTopic> All { get; } = [.. Of(Papers, "*Texts.resx"), .. Of(Engine, "*Texts.resx")];

    /// <summary>The same in the manner of some practicals: what differs where drying takes the place of heating.</summary>
    public static IReadOnlyList<TextTopic> InManner { get; } = [.. Of(Papers, "*Texts.*.resx"), .. Of(Engine, "*Texts.*.resx")];

    private static IEnumerable<TextTopic> Of(string library, string files) =>
        Directory.GetFiles(Folder(library), files).Order(StringComparer.Ordinal).Select(path => Read(library, path));

    private static TextTopic Read(string library, string path) => new(
        library,
        Path.GetFileNameWithoutExtension(path),
        [
            .. XDocument.Load(path).Root!.Elements("data")
                .Select(d => new KeptText(d.Attribute("name")!.Value, d.Element("value")!.Value, d.Element("comment")?.Value ?? "")),
        ]);

    private static string Folder(string library)
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Calx.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("The checkout was not found above the tests.");
        }

        return Path.Combine(folder, "src", library, "Texts");
    }
}

/// <summary>A text of a topic.</summary>
/// <param name="Key">What it is for.</param>
/// <param name="Value">The text.</param>
/// <param name="Comment">Where it stands, and what stands in its places.</param>
internal sealed record KeptText(string Key, string Value, string Comment);
