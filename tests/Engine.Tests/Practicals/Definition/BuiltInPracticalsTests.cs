using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

public sealed class BuiltInPracticalsTests
{
    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_practical_is_read_without_fault_or_warning(string id)
    {
        string path = Path.Combine(AppContext.BaseDirectory, "practicals", id + ".yaml");
        PracticalReading reading = PracticalReader.Read(File.ReadAllBytes(path), id + ".yaml");
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Warnings);
        Assert.Equal(id, reading.Practical!.Id);
    }

    [Fact]
    public void A_mistyped_id_gets_the_nearest_one_as_a_suggestion()
    {
        Assert.Null(BuiltInPracticals.Find("magnesium-oxid"));
        Assert.EndsWith("did you mean magnesium-oxide?", BuiltInPracticals.Unknown("magnesium-oxid"), StringComparison.Ordinal);
        Assert.DoesNotContain("did you mean", BuiltInPracticals.Unknown("titration"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_text_kept_with_results_is_the_file_as_it_stands()
    {
        Practical kept = BuiltInPracticals.Find(Files.Magnesium)!;
        Assert.Equal(Files.Text(Files.Magnesium), kept.SourceText);
        string[] files = [.. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "practicals"), "*.yaml").Select(f => Path.GetFileNameWithoutExtension(f)!)];
        Assert.Equal(files.Order(StringComparer.Ordinal), BuiltInPracticals.Ids);
        Assert.Equal(BuiltInPracticals.Ids, BuiltInPracticals.All.Select(p => p.Id));
    }
}
