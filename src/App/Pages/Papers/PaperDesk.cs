using System.IO.Compression;
using System.Text;
using Calx.App.Input;
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
        Tints.FirstOrDefault(t => t.Value == query["tint"]).Value is { Length: > 0 } tint ? tint : null);

    /// <summary>Colours of sheets that schools keep, by name.</summary>
    public static IReadOnlyList<(string Name, string Value)> Tints { get; } = [("white", ""), ("cream", "fff4d6"), ("blue", "dcebf7"), ("green", "e0f0dc"), ("pink", "fbe3e6")];

    /// <summary>All papers.</summary>
    public static PaperSet All(PaperSetting setting, PlanChoice choice) =>
        PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>(), choice.Stock);

    /// <summary>One file of them by its name, or a page that says that there is none.</summary>
    public static async Task<IResult> File(HttpContext context, PaperSet papers, string name)
    {
        if (name == Everything)
        {
            return Results.File(await Task.Run(() => Zip(papers), context.RequestAborted), "application/zip", Everything);
        }

        string id = Path.GetFileNameWithoutExtension(name);
        Paper? paper = papers.Documents.FirstOrDefault(p => p.Id == id);
        return (paper, Path.GetExtension(name)) switch
        {
            (null, ".xlsx") when papers.Workbooks.FirstOrDefault(b => b.Id == id) is ResultsWorkbook book => Results.File(book.Bytes(), WorkbookType, name),
            (Paper found, ".html") => WholeFile.Page(context, PaperHtml.Of(found)),
            (Paper found, ".docx") => Results.File(PaperWord.Of(found), WordType, name),
            _ => Show.Nothing("paper"),
        };
    }

    private static byte[] Zip(PaperSet papers)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (ResultsWorkbook book in papers.Workbooks)
            {
                Put(zip, $"{book.Id}.xlsx", book.Bytes());
            }

            foreach (Paper paper in papers.Documents)
            {
                Put(zip, $"{paper.Id}.docx", PaperWord.Of(paper));
                Put(zip, $"{paper.Id}.html", Encoding.UTF8.GetBytes(PaperHtml.Of(paper)));
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
    public static PaperSetting Setting(Plan plan, PaperOccasion occasion, HttpContext context, bool isSigned) =>
        new(plan, occasion, Look(context.Request.Query), isSigned);
}
