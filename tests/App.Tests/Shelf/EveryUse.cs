using System.Text.Json;
using Calx.Practicals.Definition;

namespace Calx.App.Tests.Shelf;

/// <summary>One practical through every command that uses its file, as a teacher would go through them: a plan, papers, an invented class,
/// its analysis, data for those who were away, and marks.</summary>
/// <param name="practical">An id, or the path of a file.</param>
/// <param name="folder">An empty folder to write in.</param>
internal sealed class EveryUse(string practical, TemporaryFolder folder)
{
    private const int MostGroups = 6;

    /// <summary>Six, or as many as may do it side by side.</summary>
    private int Groups => Math.Min(MostGroups, BuiltInPracticals.Find(practical)?.Limits.Groups ?? MostGroups);

    /// <summary>Goes through them all.</summary>
    public void Check()
    {
        Plan();
        Papers();
        SimulateAndAnalyse();
        MarkThoseWhoWereAway();
    }

    private void Plan()
    {
        Terminal run = Run("plan", practical, "--json", "--no-ways", "--minutes", "100");
        // 1 says that it does not fit the lesson or that the balance is too coarse: an answer as well.
        Assert.True(run.ExitCode is 0 or 1, run.Error);
        JsonElement plan = Schemas.Check("plan", run.Output);
        Assert.Empty(plan.GetProperty("notIdentifiable").EnumerateArray());
    }

    private void Papers()
    {
        Terminal run = Run("papers", practical, "--out", "papers", "--format", "html", "--minutes", "100");
        Assert.True(run.ExitCode == 0, run.Error);
        string[] written = [.. Directory.GetFiles(In("papers")).Select(f => Path.GetFileNameWithoutExtension(f)!)];
        Assert.Superset(new HashSet<string>(["answer-key", "cover-sheet", "lesson-strip", "requisition", "risk-notes", "student-sheet-guided", "student-sheet-open", "student-sheet-standard"]), written.ToHashSet());
        Assert.All(Directory.GetFiles(In("papers"), "*.html"), file =>
        {
            string text = File.ReadAllText(file);
            text = text[text.IndexOf("<body", StringComparison.Ordinal)..];
            Assert.DoesNotMatch(@"\{[a-zA-Z]+\}</|NaN|∞|-0\.0+ ", text);
            // Words that mislead about measurement: common practice in schools, no source.
            Assert.DoesNotMatch(@"(?i)>[^<]*(\bweights?\b|\breliab|human error|very accurate)", text);
        });
    }

    private void SimulateAndAnalyse()
    {
        Terminal drawn = Run("simulate", practical, "--groups", $"{Groups}", "--seed", "5", "--csv", "class.csv");
        Assert.True(drawn.ExitCode == 0, drawn.Error);
        Terminal run = Run("analyse", "class.csv", "--practical", practical, "--json");
        Assert.True(run.ExitCode == 0, run.Error);
        JsonElement found = Schemas.Check("analysis", run.Output);
        Assert.Equal(Groups, found.GetProperty("groups").GetArrayLength());
        Assert.Empty(found.GetProperty("rejected").EnumerateArray());
        Assert.Empty(found.GetProperty("notIdentifiable").EnumerateArray());
    }

    private void MarkThoseWhoWereAway()
    {
        File.WriteAllText(In("away.txt"), "Ana\nBen\n");
        Terminal away = Run("catch-up", practical, "--students", "away.txt", "--seed", "7", "--out", "away", "--format", "html");
        Assert.True(away.ExitCode == 0, away.Error);
        JsonElement truth = Schemas.Check("catch-up", File.ReadAllText(In("away/catch-up-truth.json")));
        JsonElement pack = truth.GetProperty("packs")[0];
        string[] asked = [.. pack.GetProperty("answers").EnumerateArray().Select(a => a.GetProperty("id").GetString()!).Distinct()];
        int heatings = pack.GetProperty("answers").EnumerateArray().Max(a => a.GetProperty("stoppedAfter").GetInt32());
        string[] values = [.. asked.Select(id => pack.GetProperty("answers").EnumerateArray()
            .Single(a => a.GetProperty("id").GetString() == id && a.GetProperty("stoppedAfter").GetInt32() == heatings).GetProperty("value").GetDouble().ToString("G6", System.Globalization.CultureInfo.InvariantCulture))];
        File.WriteAllText(In("answers.csv"), $"student,{string.Join(',', asked)}\nAna,{string.Join(',', values)}\nBen\n");
        Terminal run = Run("mark", "answers.csv", "--practical", practical, "--truth", "away/catch-up-truth.json", "--no-figures", "--ar-set", "iupac-2024", "--json");
        Assert.True(run.ExitCode == 0, run.Error);
        JsonElement marks = Schemas.Check("marking", run.Output);
        JsonElement ana = marks.GetProperty("students")[0];
        Assert.Equal(ana.GetProperty("of").GetInt32(), ana.GetProperty("total").GetInt32());
        Assert.Equal(0, marks.GetProperty("students")[1].GetProperty("total").GetInt32());
    }

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private string In(string name) => Path.Combine(folder.FullName, name);
}
