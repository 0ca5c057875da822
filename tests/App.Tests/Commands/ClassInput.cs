using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary>A class's file written for one test and given to <c>calx analyse</c>.</summary>
internal static class ClassInput
{
    /// <summary>Analyses a CSV file that must be readable, and holds the answer to its schema.</summary>
    public static JsonElement Json(string practical, string csv, params string[] options)
    {
        Terminal run = Run(practical, csv, ["--json", .. options]);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        return Schemas.Check("analysis", run.Output);
    }

    /// <summary>Analyses a CSV file called class.csv.</summary>
    public static Terminal Run(string practical, string csv, params string[] options)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), csv);
        return Terminal.RunIn(folder.FullName, ["analyse", "class.csv", "--practical", practical, .. options]);
    }

    /// <summary>The entry of a group.</summary>
    public static JsonElement Group(this JsonElement answer, string name) => Assert.Single(
        answer.GetProperty("groups").EnumerateArray(), group => group.GetProperty("group").GetString() == name);

    /// <summary>A quantity of a group, or of the class.</summary>
    public static double Value(this JsonElement holder, string quantity) =>
        holder.GetProperty("quantities").GetProperty(quantity).GetProperty("value").GetDouble();

    /// <summary>The texts of an array.</summary>
    public static IReadOnlyList<string> Texts(this JsonElement holder, string key) =>
        [.. holder.GetProperty(key).EnumerateArray().Select(text => text.GetString()!)];
}
