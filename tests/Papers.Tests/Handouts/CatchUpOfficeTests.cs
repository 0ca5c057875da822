using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Catch-up papers as a word processor lays them out (LibreOffice, headless). Skipped where there is no LibreOffice or no pdftotext.</summary>
public sealed class CatchUpOfficeTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-catch-up-");

    /// <summary>Common practice in schools: a sheet has a front and a back, and a pack takes two.</summary>
    [Fact]
    public async Task A_pack_takes_two_sheets_at_most_its_strips_one_side_and_every_side_says_that_its_data_are_simulated()
    {
        Assert.SkipWhen(OfficeTests.Find("soffice") is null || OfficeTests.Find("pdftotext") is null, "LibreOffice or pdftotext is missing.");
        var names = new List<string>();
        foreach ((string id, SupportLevel level) in Shelf.Three.SelectMany(id => Enum.GetValues<SupportLevel>().Select(level => (id, level))))
        {
            names.Add(Path.Combine(folder.FullName, $"{id}.{level}"));
            Paper sheet = CatchUpPaperTests.Papers(id, level)[0];
            await File.WriteAllBytesAsync($"{names[^1]}.docx", PaperWord.Of(sheet), TestContext.Current.CancellationToken);
        }

        await OfficeTests.Run("soffice", [$"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "pdf", "--outdir", folder.FullName, .. names.Select(n => $"{n}.docx")]);
        foreach (string name in names)
        {
            string[] sides = (await OfficeTests.Run("pdftotext", ["-layout", $"{name}.pdf", "-"])).Split('\f')[..^1];
            Assert.InRange(sides.Length, 3, 4);
            Assert.All(sides, side => Assert.Contains("SIMULATED DATA", side, StringComparison.Ordinal));
            Assert.All((string[])["Before heating, and after the first heating", "After heating 2 of 3", "After heating 3 of 3"], step => Assert.Contains(step, sides[1], StringComparison.Ordinal));
            Assert.Contains("Your results table", sides[0], StringComparison.Ordinal);
        }
    }

    public void Dispose() => folder.Delete(recursive: true);
}
