using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Definition;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>What a practical's file says of the marks of an answer.</summary>
public class MarksOfFileTests
{
    private const string Ratio = "formula: molesMagnesium / molesOxygen, marks: 1 }";

    [Fact]
    public void Marks_may_say_what_each_is_for()
    {
        AnswerDefinition answer = Read("marks: { method: 1, accuracy: 2, unit: 1 }").Answers.Single(a => a.Id == "ratio");

        Assert.Equal(new AnswerMarks(1, 2, 1, 0), answer.MarksFor);
        Assert.Equal(4, answer.Marks);
        Assert.Equal(CarryPolicy.Allowed, answer.Carry);
    }

    [Theory]
    [InlineData("marks: { accuracy: 1 }")]
    [InlineData("marks: { method: 0 }")]
    [InlineData("marks: { method: 1, style: 1 }")]
    [InlineData("marks: 1, carry: sometimes")]
    public void What_is_not_understood_is_a_fault_with_its_place(string marks)
    {
        PracticalReading reading = PracticalReader.Read(Text(marks), "f.yaml");

        Assert.Null(reading.Practical);
        Assert.All(reading.Faults, f => Assert.Contains("ratio", Text(marks).Split('\n')[f.Line - 1], StringComparison.Ordinal));
    }

    [Fact]
    public void A_mark_for_accuracy_is_not_carried()
    {
        AnswerMark carried = Mark(Read("marks: { method: 1, accuracy: 2 }"), "0.00438", "2.26"), right = Mark(Read("marks: { method: 1, accuracy: 2 }"), "0.00875", "1.13");

        Assert.Equal((1, 3), (carried.Marks, right.Marks));
    }

    [Fact]
    public void Nothing_is_carried_where_the_file_forbids_it()
    {
        AnswerMark mark = Mark(Read("marks: 1, carry: never"), "0.00438", "2.26");

        Assert.Equal(0, mark.Marks);
        Assert.NotNull(Assert.IsType<Verdict.Wrong>(mark.Verdict).Reason);
        Assert.IsType<Verdict.Right>(Mark(Read("marks: 1, carry: never"), "0.00875", "1.13").Verdict);
    }

    // 30.00, 30.24, 30.38 g with Mg 24.3, O 16.0: 0.00988 and 0.00875 mol; O2 for O gives 0.00438 and 2.26.
    private static AnswerMark Mark(Practical practical, string molesOxygen, string ratio)
    {
        var readings = new Dictionary<string, IReadOnlyList<WrittenNumber>> { ["empty"] = [new(30.00m)], ["before"] = [new(30.24m)], ["after"] = [new(30.38m)] };
        var answers = new Dictionary<string, string>
        {
            ["massMagnesium"] = "0.24", ["massOxygen"] = "0.14", ["molesMagnesium"] = "0.00988", ["molesOxygen"] = molesOxygen, ["ratio"] = ratio,
        };
        return new Marker(practical, MarkingPolicy.Usual, [AtomicWeightSets.Named("school-1dp")]).Mark([new StudentWork("14", readings, answers)])
            .Works[0].Answers.Single(a => a.Answer.Id == "ratio");
    }

    private static Practical Read(string marks)
    {
        PracticalReading reading = PracticalReader.Read(Text(marks), "f.yaml");
        return reading.Practical ?? throw new InvalidOperationException(string.Join('\n', reading.Faults));
    }

    private static string Text(string marks)
    {
        string text = Files.Text("magnesium-oxide");
        Assert.Contains(Ratio, text, StringComparison.Ordinal);
        return text.Replace(Ratio, Ratio.Replace("marks: 1", marks, StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
