using System.Diagnostics;
using Calx.Papers.Documents;
using Calx.Papers.Marks;
using Calx.Papers.Tests.Spreadsheets;

namespace Calx.Papers.Tests.Marks;

/// <summary>The workbook as a spreadsheet program prints it (LibreOffice, headless).</summary>
public sealed class MarksPrintTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-marks-");

    public void Dispose() => folder.Delete(recursive: true);

    [Theory]
    [InlineData(30, false, SheetSize.A4, 841)]
    [InlineData(36, true, SheetSize.A4, 841)]
    [InlineData(30, true, SheetSize.Letter, 792)]
    public async Task The_marks_of_a_class_stand_on_one_side_across(int students, bool isWhole, SheetSize size, int widthInPoints)
    {
        string? reader = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(d => Path.Combine(d, "pdftotext")).FirstOrDefault(File.Exists);
        Assert.SkipWhen(Office.Program is null || reader is null, "LibreOffice or pdftotext is missing.");
        byte[] book = MarksWorkbook.Of(MarkedClasses.Of(students, isWhole), MarkedClasses.Setting(new PaperLook(size, false, null)));
        await File.WriteAllBytesAsync(Path.Combine(folder.FullName, "marks.xlsx"), book, TestContext.Current.CancellationToken);
        await Run(Office.Program!, $"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "pdf", "--outdir", folder.FullName, Path.Combine(folder.FullName, "marks.xlsx"));
        string pdf = Path.Combine(folder.FullName, "marks.pdf");
        string[] sides = (await Run(reader!, "-layout", pdf, "-")).Split('\f');

        Assert.All(Enumerable.Range(0, students), i => Assert.Contains(MarkedClasses.NameOf(i), sides[0], StringComparison.Ordinal));
        Assert.Contains("Mean", sides[0], StringComparison.Ordinal);
        Assert.Contains("every answer", sides[1], StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"width=\"{widthInPoints}."), await Run(reader!, "-bbox", "-l", "1", pdf, "-"), StringComparison.Ordinal);
    }

    private static async Task<string> Run(string program, params string[] words)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await errors);
        return said;
    }
}
