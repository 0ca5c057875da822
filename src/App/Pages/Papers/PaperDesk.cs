using System.Globalization;
using System.IO.Compression;
using System.Text;
using Calx.App.Input;
using Calx.App.Pages.CatchUp;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Practicals.Planning;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Papers;

/// <summary>The papers of a lesson or a plan: a page that lists them, each to print or for a word processor, and all in one zip.</summary>
public static class PaperDesk
{
    /// <summary>The file of all of them.</summary>
    public const string Everything = "papers.zip";

    private const string WordType = "application/vnd.openxmlformats-officedocument.wordprocessingml.document";

    private const string WorkbookType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    /// <summary>How the papers are to be printed, as the page's form says.</summary>
    public static PaperLook Look(IQueryCollection query) => new(
        query["sheet"] == "letter" ? SheetSize.Letter : SheetSize.A4,
        query["large"] == "yes",
        Tints.FirstOrDefault(t => t.Value == query["tint"]).Value is { Length: > 0 } tint ? tint : null,
        query["onestep"] == "yes")
    {
        Wall = query["wall"] == "a3" ? SheetSize.A3 : null,
    };

    /// <summary>Colours of sheets that schools keep, by name.</summary>
    public static IReadOnlyList<(string Name, string Value)> Tints { get; } = [("white", ""), ("cream", "fff4d6"), ("blue", "dcebf7"), ("green", "e0f0dc"), ("pink", "fbe3e6")];

    /// <summary>All papers; those that come after the lesson where there is an outcome.</summary>
    public static PaperSet All(PaperSetting setting, PlanChoice choice, ClassOutcome? outcome = null) =>
        PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>(), choice.Stock, outcome);

    /// <summary>One file of them by its name, or a page that says that there is none.</summary>
    /// <param name="context">The request.</param>
    /// <param name="papers">The papers.</param>
    /// <param name="name">The file's name.</param>
    /// <param name="truth">What is true of the catch-up packs among them, or null where there are none.</param>
    public static async Task<IResult> File(HttpContext context, PaperSet papers, string name, byte[]? truth = null)
    {
        if (name == Everything)
        {
            return Results.File(await Task.Run(() => Zip(papers, truth), context.RequestAborted), "application/zip", Everything);
        }

        if (name == LessonCatchUp.TruthFile && truth is not null)
        {
            return Results.File(truth, "application/json", name);
        }

        string id = Path.GetFileNameWithoutExtension(name);
        Paper? paper = papers.Documents.FirstOrDefault(p => p.Id == id);
        return (paper, Path.GetExtension(name)) switch
        {
            (null, ".xlsx") when papers.Workbooks.FirstOrDefault(b => b.Id == id) is ResultsWorkbook book => Results.File(book.Bytes(), WorkbookType, name),
            (Paper found, ".html") => WholeFile.Page(context, PaperHtml.Of(found)),
            (Paper found, ".docx") => Results.File(PaperWord.Of(found), WordType, name),
            (null, ".svg" or ".png") when papers.Pictures.FirstOrDefault(p => p.Id == id) is PaperPicture picture =>
                Path.GetExtension(name) == ".svg" ? Results.File(picture.Svg(), "image/svg+xml", name) : Results.File(picture.Png(), "image/png", name),
            _ => Show.Nothing("paper"),
        };
    }

    private static byte[] Zip(PaperSet papers, byte[]? truth)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ResultsWorkbook book in papers.Workbooks)
            {
                Put(zip, $"{book.Id}.xlsx", book.Bytes());
            }

            if (truth is not null)
            {
                Put(zip, LessonCatchUp.TruthFile, truth);
            }

            // Made side by side, put in in order.
            foreach ((string id, byte[] word, string html) in papers.Documents.AsParallel().AsOrdered().Select(p => (p.Id, PaperWord.Of(p), PaperHtml.Of(p))))
            {
                Put(zip, $"{id}.docx", word);
                Put(zip, $"{id}.html", Encoding.UTF8.GetBytes(html));
            }

            foreach (PaperPicture picture in papers.Pictures)
            {
                Put(zip, $"pictures/{picture.Id}.svg", picture.Svg());
                Put(zip, $"pictures/{picture.Id}.png", picture.Png());
            }
        }

        return bytes.ToArray();
    }

    private static void Put(ZipArchive zip, string name, byte[] content)
    {
        using Stream entry = zip.CreateEntry(name).Open();
        entry.Write(content);
    }

    /// <summary>The papers' setting.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="occasion">Class and date.</param>
    /// <param name="context">Whose form says how they are printed.</param>
    /// <param name="isSigned">Whether the practical was signed for this plan.</param>
    /// <param name="seed">Which of the possible classes stands where data are simulated, unless the form says another.</param>
    public static PaperSetting Setting(Plan plan, PaperOccasion occasion, HttpContext context, bool isSigned, ulong seed) => new(
        plan,
        occasion,
        Look(context.Request.Query),
        isSigned,
        ulong.TryParse(context.Request.Query["seed"], NumberStyles.None, CultureInfo.InvariantCulture, out ulong said) && said <= long.MaxValue ? said : seed);
}
