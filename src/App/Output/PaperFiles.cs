using System.Text;
using Calx.App.Input;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;

namespace Calx.App.Output;

/// <summary>Papers as files of a folder. None that is there already is touched: a teacher may have changed it.</summary>
internal static class PaperFiles
{
    /// <summary>The form that a browser makes.</summary>
    private const string Pdf = "pdf";

    /// <summary>Pictures as lines.</summary>
    public const string Svg = "svg";

    /// <summary>Pictures as bitmaps.</summary>
    public const string Png = "png";

    /// <summary>Writes each paper in each form; tells what was written, and a fault, on standard error.</summary>
    /// <returns>The exit code.</returns>
    public static int Write(PaperSet papers, PapersOrder order, Surroundings surroundings)
    {
        try
        {
            if (File.Exists(order.Folder))
            {
                surroundings.Error.WriteLine(Fault.Line(order.Folder, 1, 1, "this is a file, and it is left as it is; name a folder"));
                return ExitCode.BadInput;
            }

            bool isPicturesOnly = order.Formats.All(f => f is Svg or Png);
            if (isPicturesOnly && papers.Pictures.Count == 0)
            {
                surroundings.Error.WriteLine("calx papers: --format: none of these papers has a picture; the student sheet, the lesson strip, the report and the display have some");
                return ExitCode.BadInput;
            }

            Directory.CreateDirectory(order.Folder);
            (string Path, Func<byte[]> Content)[] files =
            [
                .. isPicturesOnly ? [] : papers.Documents.SelectMany(p => Wanted(p.Id, [("docx", () => PaperWord.Of(p)), ("html", () => Page(p)), (Pdf, () => Printed(Page(p)))], order)),
                .. isPicturesOnly ? [] : papers.Workbooks.SelectMany(b => Wanted(b.Id, [("xlsx", b.Bytes)], order)),
                .. papers.Pictures.SelectMany(p => Asked(p.Id, [(Svg, p.Svg), (Png, p.Png)], order)),
            ];
            string[] there = [.. files.Select(f => f.Path).Where(Path.Exists)];
            foreach (string path in there)
            {
                surroundings.Error.WriteLine(Fault.Line(path, 1, 1, "there is such a file already, and it is left as it is; name another folder"));
            }

            if (there.Length > 0)
            {
                return ExitCode.BadInput;
            }

            if (files.Any(f => Path.GetExtension(f.Path) == $".{Pdf}") && PdfPrinter.Find() is null)
            {
                surroundings.Error.WriteLine($"calx papers: {PdfPrinter.Missing}");
                return ExitCode.CannotWrite;
            }

            // Made side by side, a few at a time, written and told in order.
            foreach ((string Path, Func<byte[]> Content)[] few in files.Chunk(Environment.ProcessorCount))
            {
                Task<byte[]>[] made = [.. few.Select(f => Task.Run(f.Content, surroundings.Cancellation()))];
                for (int i = 0; i < few.Length; i++)
                {
                    NewFile.Create(few[i].Path, made[i].GetAwaiter().GetResult(), surroundings.Cancellation());
                    surroundings.Error.WriteLine(few[i].Path);
                }
            }

            return ExitCode.Done;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(order.Folder, 1, 1, $"the papers cannot be written there ({NewFile.ReasonOf(failure)})"));
            return ExitCode.CannotWrite;
        }
    }

    /// <summary>A paper as one HTML file.</summary>
    public static byte[] Page(Paper paper) => Encoding.UTF8.GetBytes(PaperHtml.Of(paper));

    /// <summary>An HTML file printed to PDF, by way of a folder of its own: the file gets its name only once it is whole.</summary>
    public static byte[] Printed(byte[] html)
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-paper-");
        try
        {
            string page = Path.Combine(folder.FullName, "paper.html"), pdf = Path.Combine(folder.FullName, "paper.pdf");
            File.WriteAllBytes(page, html);
            PdfPrinter.Print(PdfPrinter.Find()!, page, pdf);
            return File.ReadAllBytes(pdf);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>A paper's files in the forms that were asked for, or where it has none of those in all that need no other program.</summary>
    private static IEnumerable<(string Path, Func<byte[]> Content)> Wanted(string id, (string Form, Func<byte[]> Content)[] forms, PapersOrder order)
    {
        bool hasOne = forms.Any(f => order.Formats.Contains(f.Form));
        return forms.Where(f => hasOne ? order.Formats.Contains(f.Form) : f.Form != Pdf).Select(f => Named(id, f, order));
    }

    /// <summary>Files in the forms that were asked for, and in no other.</summary>
    private static IEnumerable<(string Path, Func<byte[]> Content)> Asked(string id, (string Form, Func<byte[]> Content)[] forms, PapersOrder order) =>
        forms.Where(f => order.Formats.Contains(f.Form)).Select(f => Named(id, f, order));

    private static (string Path, Func<byte[]> Content) Named(string id, (string Form, Func<byte[]> Content) file, PapersOrder order) =>
        (Path.Combine(order.Folder, $"{id}.{file.Form}"), file.Content);
}
