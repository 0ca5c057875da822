using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

/// <summary>Every name that a shipped practical gives its readings and columns is recognised as that reading.</summary>
public class BuiltInHeadingTests
{
    public static TheoryData<string, string, string> Names()
    {
        TheoryData<string, string, string> names = [];
        foreach (Practical practical in BuiltInPracticals.All)
        {
            foreach (ReadingDefinition reading in practical.Readings)
            {
                foreach (string name in reading.Aliases.Append(reading.Label).Append(reading.Id))
                    names.Add(practical.Id, name, reading.Id);
                if (reading.RepeatLabel is string repeat)
                    names.Add(practical.Id, repeat, reading.Id + "2");
            }
            foreach (ColumnDefinition column in practical.Columns)
            {
                foreach (string name in column.Aliases.Append(column.Label).Append(column.Id))
                    names.Add(practical.Id, name, column.Id);
            }
        }
        return names;
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_label_id_and_alias_means_its_own_reading(string practical, string name, string id)
    {
        ClassReading read = ClassTableReader.Read(
            [new CellTable("", [CellRow.Of(1, "Group", $"{name} / {ReadingNames.UnitOf(BuiltInPracticals.Find(practical)!, id.TrimEnd('2'))}"), CellRow.Of(2, "1")])], BuiltInPracticals.Find(practical)!);
        ClassReadings taken = Assert.IsType<ClassReading.Taken>(read).Readings;
        Assert.Equal(id, taken.Columns[1].Meaning.Word);
    }

    [Fact]
    public void Swapped_and_subtracted_columns_are_noticed_from_the_practical_itself()
    {
        ClassReading read = ClassTableReader.Read(
            [Bench.Table("Group|before|empty|sample\n1|30.10|30.34|30.2\n2|28.77|29.02|29.1\n3|31.00|31.23|31.1")],
            BuiltInPracticals.Find("magnesium-oxide")!);
        Assert.Equal("group ignored ignored ignored", Bench.Meanings(Assert.IsType<ClassReading.Taken>(read).Readings));
    }
}
