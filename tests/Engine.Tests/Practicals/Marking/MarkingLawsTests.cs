using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>What no way of writing and no size of the sample may change. Right values are worked out here by themselves, with Mg 24.3 and O 16.0.</summary>
public class MarkingLawsTests
{
    private const double Mg = 24.3, O = 16.0;

    /// <summary>Hundredths of a gram: the vessel, the ribbon, the gain.</summary>
    private static readonly Gen<(int Vessel, int Ribbon, int Gain)> Benches = Gen.Select(Gen.Int[1100, 4500], Gen.Int[15, 60], Gen.Int[6, 45]);

    [Fact]
    public void A_right_method_on_any_readings_earns_full_marks() => Benches.Always(bench =>
    {
        MarkedWork marked = Mark(Readings(bench, 100, 2), Right(bench));

        Assert.All(marked.Answers, a => Assert.True(a.Verdict is Verdict.Right, $"{a.Answer.Id} {a.Given}: {a.Verdict}"));
        Assert.Equal(marked.Of, marked.Total);
    });

    [Fact]
    public void A_wrong_step_rightly_used_costs_that_step_alone() => Gen.Select(Benches, Gen.Int[2, 9]).Always((bench, factor) =>
    {
        (double mg, double o) = (bench.Ribbon / 100.0, bench.Gain / 100.0);
        Dictionary<string, string> answers = Right(bench);
        double wrong = double.Parse(Figures(o / O * (1 + (factor / 7.0)), 4), CultureInfo.InvariantCulture);
        answers["molesOxygen"] = Figures(wrong, 4);
        answers["ratio"] = Figures(mg / Mg / wrong, 4);
        MarkedWork marked = Mark(Readings(bench, 100, 2), answers);

        AnswerMark step = marked.Answers.Single(a => a.Answer.Id == "molesOxygen");
        Assert.IsType<Verdict.Wrong>(step.Verdict);
        Assert.IsType<Verdict.Carried>(marked.Answers.Single(a => a.Answer.Id == "ratio").Verdict);
        Assert.Equal(marked.Of - 1, marked.Total);
    });

    [Fact]
    public void Ten_times_as_much_of_everything_changes_no_mark() => Gen.Select(Benches, Wrongs).Always((bench, wrong) =>
    {
        Dictionary<string, string> answers = wrong(Right(bench));
        var tenfold = answers.ToDictionary(a => a.Key, a => a.Key.StartsWith("ma", StringComparison.Ordinal) || a.Key.StartsWith("mol", StringComparison.Ordinal) ? Tenfold(a.Value) : a.Value);

        Assert.Equal(Told(Mark(Readings(bench, 100, 2), answers)), Told(Mark(Readings(bench, 10, 1), tenfold)));
    });

    [Fact]
    public void A_heavier_vessel_changes_no_mark() => Gen.Select(Benches, Wrongs, Gen.Int[100, 2000]).Always((bench, wrong, more) =>
        Assert.Equal(
            Told(Mark(Readings(bench, 100, 2), wrong(Right(bench)))),
            Told(Mark(Readings(bench with { Vessel = bench.Vessel + more }, 100, 2), wrong(Right(bench))))));

    [Fact]
    public void The_way_a_number_is_written_changes_no_mark() => Gen.Select(Benches, Wrongs, Gen.Int[0, 4]).Always((bench, wrong, form) =>
    {
        Dictionary<string, string> answers = wrong(Right(bench));

        Assert.Equal(
            Told(Mark(Readings(bench, 100, 2), answers)),
            Told(Mark(Readings(bench, 100, 2), answers.ToDictionary(a => a.Key, a => Written(a.Key, a.Value, form)))));
    });

    /// <summary>Nothing wrong; one value half again as large; two exchanged; one left out.</summary>
    private static Gen<Func<Dictionary<string, string>, Dictionary<string, string>>> Wrongs { get; } = Gen.Select(Gen.Int[0, 3], Gen.Int[0, 4]).Select(drawn =>
        new Func<Dictionary<string, string>, Dictionary<string, string>>(right =>
        {
            var changed = new Dictionary<string, string>(right);
            string id = right.Keys.ElementAt(drawn.Item2);
            changed[id] = drawn.Item1 switch
            {
                1 => Figures(1.5 * double.Parse(right[id], CultureInfo.InvariantCulture), 3),
                2 => right[right.Keys.ElementAt((drawn.Item2 + 2) % 5)],
                3 => string.Empty,
                _ => right[id],
            };
            return changed;
        }));

    private static Dictionary<string, IReadOnlyList<WrittenNumber>> Readings((int Vessel, int Ribbon, int Gain) bench, int perGram, int decimals)
    {
        IReadOnlyList<WrittenNumber> Of(int hundredths) => WrittenNumber.TryParse(((decimal)hundredths / perGram).ToString($"F{decimals}", CultureInfo.InvariantCulture), out WrittenNumber number) ? [number] : [];
        return new() { ["empty"] = Of(bench.Vessel), ["before"] = Of(bench.Vessel + bench.Ribbon), ["after"] = Of(bench.Vessel + bench.Ribbon + bench.Gain) };
    }

    private static Dictionary<string, string> Right((int Vessel, int Ribbon, int Gain) bench)
    {
        (double mg, double o) = (bench.Ribbon / 100.0, bench.Gain / 100.0);
        return new()
        {
            ["massMagnesium"] = mg.ToString("F2", CultureInfo.InvariantCulture),
            ["massOxygen"] = o.ToString("F2", CultureInfo.InvariantCulture),
            ["molesMagnesium"] = Figures(mg / Mg, 4),
            ["molesOxygen"] = Figures(o / O, 4),
            ["ratio"] = Figures(mg / Mg / (o / O), 3),
        };
    }

    private static MarkedWork Mark(Dictionary<string, IReadOnlyList<WrittenNumber>> readings, Dictionary<string, string> answers) =>
        new Marker(Given.Magnesium, new MarkingPolicy(FiguresPenalty: 0), [AtomicWeightSets.Named("school-1dp")]).Mark([new StudentWork("14", readings, answers)]).Works[0];

    private static string Told(MarkedWork work) =>
        string.Join(", ", work.Answers.Select(a => $"{a.Answer.Id} {a.Marks} {a.Verdict.GetType().Name}"));

    private static string Figures(double value, int figures)
    {
        int decimals = Math.Max(0, figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))));
        return value.ToString($"F{decimals}", CultureInfo.InvariantCulture);
    }

    private static string Tenfold(string value) =>
        value.Length == 0 ? value : (10 * decimal.Parse(value, CultureInfo.InvariantCulture)).ToString($"F{Math.Max(0, value.Length - value.IndexOf('.', StringComparison.Ordinal) - 2)}", CultureInfo.InvariantCulture);

    private static string Written(string id, string value, int form)
    {
        string unit = id == "ratio" ? string.Empty : id.StartsWith("mol", StringComparison.Ordinal) ? "mol" : "g";
        return value.Length == 0 ? value : form switch
        {
            0 => value.Replace('.', ','),
            1 => $"{value} {unit}".Trim(),
            2 => $"{value}{unit}",
            3 => id == "ratio" ? $"{value} : 1" : $"{id} = {value}",
            _ => $"{value}e0",
        };
    }
}
