using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx papers --set results</c>: a workbook for the class's results, and the way back by <c>calx analyse</c>.</summary>
public sealed class PapersResultsTests
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    [Theory]
    [InlineData("xlsx")]
    [InlineData("docx")]
    public void A_paper_comes_in_the_form_it_has(string format)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Terminal run = Terminal.RunIn(folder.FullName, "papers", "magnesium-oxide", "--set", "results", "--format", format, "--out", "papers");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["class-results.xlsx"], Directory.GetFiles(Path.Combine(folder.FullName, "papers")).Select(Path.GetFileName));
    }

    [Fact]
    public void A_document_is_none_for_a_spreadsheet_and_comes_in_its_own_forms()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Terminal run = Terminal.RunIn(folder.FullName, "papers", "magnesium-oxide", "--set", "risk", "--set", "results", "--format", "xlsx", "--out", "papers");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["class-results.xlsx", "risk-notes.docx", "risk-notes.html"], Directory.GetFiles(Path.Combine(folder.FullName, "papers")).Select(Path.GetFileName).Order());
    }

    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void A_filled_workbook_gives_the_findings_of_the_same_readings_as_CSV(string id)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(BuiltInPracticals.Find(id)!, []), AtomicWeights.Iupac2024, new SimulationPlan(8, notesObservations: false), seed: 11, threads: 1, TestContext.Current.CancellationToken);
        Assert.Equal(0, Terminal.RunIn(folder.FullName, "papers", id, "--groups", "8", "--set", "results", "--format", "xlsx", "--out", ".").ExitCode);
        Fill(Path.Combine(folder.FullName, "class-results.xlsx"), drawn);
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), Csv(drawn));
        Assert.Equal(Findings(folder, "class.csv", id), Findings(folder, "class-results.xlsx", id));
    }

    /// <summary>The answer less what it says of the file itself: its columns, and sheets that are not read.</summary>
    private static string Findings(TemporaryFolder folder, string file, string practical)
    {
        Terminal run = Terminal.RunIn(folder.FullName, "analyse", file, "--practical", practical, "--json");
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Schemas.Check("analysis", run.Output);
        JsonObject answer = JsonNode.Parse(run.Output)!.AsObject();
        Assert.Empty(answer["rejected"]!.AsArray());
        answer.Remove("columns");
        answer.Remove("notes");
        return answer.ToJsonString(new JsonSerializerOptions { WriteIndented = true });
    }

    private static string Csv(SimulatedClass drawn)
    {
        var text = new StringBuilder("Group");
        text.AppendJoin("", drawn.Weighings.Select(w => $",\"{WeighingLabel.Heading(drawn.Practical, w)}\"")).Append('\n');
        foreach (SimulatedGroup group in drawn.Groups)
        {
            text.Append(CultureInfo.InvariantCulture, $"{group.Number}");
            text.AppendJoin("", drawn.Weighings.Select(w => $",{group.Readings.FirstOrDefault(r => r.Weighing == w)?.Written}")).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Writes the readings into the cells below their headings, as numbers.</summary>
    private static void Fill(string workbook, SimulatedClass drawn)
    {
        using ZipArchive zip = ZipFile.Open(workbook, ZipArchiveMode.Update);
        ZipArchiveEntry entry = zip.GetEntry("xl/worksheets/sheet1.xml")!;
        XDocument sheet;
        using (Stream from = entry.Open())
        {
            sheet = XDocument.Load(from);
        }

        XElement[] rows = [.. sheet.Descendants(Main + "row")];
        int headings = Array.FindIndex(rows, r => r.Elements(Main + "c").First().Value == "Group");
        string[] titles = [.. rows[headings].Elements(Main + "c").Select(c => c.Value.Replace('\u00a0', ' '))];
        foreach (SimulatedGroup group in drawn.Groups)
        {
            foreach (SimulatedReading reading in group.Readings)
            {
                int column = Array.IndexOf(titles, WeighingLabel.Heading(drawn.Practical, reading.Weighing));
                rows[headings + group.Number].Elements(Main + "c").ElementAt(column).Add(
                    new XElement(Main + "v", reading.Written.Value.ToString("0.#####", CultureInfo.InvariantCulture)));
            }
        }

        entry.Delete();
        using Stream to = zip.CreateEntry("xl/worksheets/sheet1.xml").Open();
        sheet.Save(to);
    }
}
