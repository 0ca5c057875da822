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
}
