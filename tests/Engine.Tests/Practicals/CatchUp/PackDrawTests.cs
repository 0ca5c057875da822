using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Weighing;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.Engine.Tests.Practicals.CatchUp;

/// <summary>Data of one's own: whose they are, that no two are alike, and what is never in them. The laws are the rules of
/// docs/methods/catch-up.md.</summary>
public class PackDrawTests
{
    private const int Many = 1000;

    public static TheoryData<string> Shelf => [.. BuiltInPracticals.All.Select(p => p.Id)];

    [Theory]
    [MemberData(nameof(Shelf))]
    public void Of_a_thousand_packs_no_two_are_alike_and_all_are_what_the_balance_can_show(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        PlanSettings plan = Packs.Plan(practical);

        DrawnPack[] drawn = Packs.Drawn(plan, Many);

        Assert.Equal(Many, drawn.Select(d => d.Shown).Distinct().Count());
        Assert.All(drawn.SelectMany(d => d.Readings).Where(r => practical.Reading(r.Weighing.Reading).IsWeighing), r => Assert.IsType<ReadingCheck.Shown>(plan.Balances[0].Check(r.Displayed)));
        Assert.All(drawn, d => Assert.Equal(PlanSettings.MostHeatings(plan.Practical), practical.Readings.Max(x => d.Readings.Count(r => r.Weighing.Reading == x.Id))));
    }

    /// <summary>Within three standard deviations of the binomial law: a true program fails 3 times in 1,000.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.15)]
    [InlineData(CatchUpOptions.UsualOddShare)]
    [InlineData(1)]
    public void As_many_are_odd_as_are_asked_for(double share)
    {
        DrawnPack[] drawn = Packs.Drawn(Packs.Plan(Given.Magnesium), Many, share);

        Assert.InRange(
            drawn.Count(d => d.Truth.IsOdd) / (double)Many, share - LongProofs.ThreeErrors(share, Many), share + LongProofs.ThreeErrors(share, Many));
    }

    [Fact]
    public void Nobody_else_changes_a_students_data_neither_added_nor_left_out_nor_in_another_order()
    {
        PlanSettings plan = Packs.Plan(Given.Magnesium);
        CatchUpStudent[] students = Packs.Students(8);

        Dictionary<string, string> all = Packs.Of(plan, students).ToDictionary(p => p.Student.Key, Packs.Text);
        CatchUpStudent[] others = [CatchUpStudent.Named("Zoe"), students[6], students[2], CatchUpStudent.Named("Abe"), students[4]];
        IReadOnlyList<CatchUpPack> some = Packs.Of(plan, others, threads: 1);

        Assert.Equal(others.Select(s => s.Name), some.Select(p => p.Student.Name));
        Assert.All(some.Where(p => all.ContainsKey(p.Student.Key)), p => Assert.Equal(all[p.Student.Key], Packs.Text(p)));
    }

    [Theory]
    [InlineData("amir k", "AMIR  K", true)]
    [InlineData(" Amir K ", "amir k", true)]
    [InlineData("Amir K", "Amir L", false)]
    [InlineData("=1+1", "=1+1", true)]
    public void Capitals_and_spaces_make_no_other_student(string one, string other, bool same) =>
        Assert.Equal(same, CatchUpStudent.Named(one).Key == CatchUpStudent.Named(other).Key);

    [Fact]
    public void A_number_in_a_class_stays_when_the_name_is_forgotten()
    {
        Assert.Equal(CatchUpStudent.Numbered(7, "Amir").Key, CatchUpStudent.Numbered(7, "").Key);
        Assert.Equal("Student 7", CatchUpStudent.Numbered(7, "").Name);
        Assert.NotEqual(CatchUpStudent.Numbered(7, "").Key, CatchUpStudent.Numbered(8, "").Key);
    }

    [Fact]
    public void Another_seed_gives_other_data() => Assert.NotEqual(
        Packs.Drawn(Packs.Plan(Given.Magnesium), 1).Single().Shown, Packs.Drawn(Packs.Plan(Given.Magnesium), 1, seed: Packs.Seed + 1).Single().Shown);

    /// <summary>On a balance of 1 g many packs show the same digits: they are drawn again, whatever the order of the list.</summary>
    [Fact]
    public void Where_two_would_be_alike_one_is_drawn_again_in_any_order()
    {
        PlanSettings plan = Packs.Plan(Given.Hydrate, resolutionInGrams: 1, repeatabilityInDivisions: 0.1);
        CatchUpStudent[] students = Packs.Students(60);
        var drawer = new PackDrawer(plan, Given.Weights, 0);
        Assert.True(students.Select(s => drawer.Draw(s.SeedIn(Packs.Seed), 0).Shown).Distinct().Count() < students.Length);

        DrawnPack[] drawn = CatchUpPacks.Drawn(drawer, students, new CatchUpOptions(Packs.Seed), []);
        DrawnPack[] backwards = CatchUpPacks.Drawn(drawer, [.. students.Reverse()], new CatchUpOptions(Packs.Seed, threads: 1), []);

        Assert.Equal(students.Length, drawn.Select(d => d.Shown).Distinct().Count());
        Assert.Equal(drawn.Select(d => d.Shown), backwards.Reverse().Select(d => d.Shown));
    }

    [Fact]
    public void A_balance_that_cannot_tell_students_apart_is_said_to_be_too_coarse()
    {
        PlanSettings plan = Packs.Plan(Given.Magnesium, resolutionInGrams: 100, repeatabilityInDivisions: 0);

        CannotSimulateException fault = Assert.Throws<CannotSimulateException>(() => Packs.Drawn(plan, 30, oddShare: 0));

        Assert.Contains("too coarse", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_gets_the_data_that_were_handed_out_before()
    {
        PlanSettings plan = Packs.Plan(Given.Magnesium);
        CatchUpPack before = Packs.Of(plan, Packs.Students(1)).Single();
        CatchUpPack again = CatchUpPacks.Of(plan, Given.Weights, Packs.Students(1), new CatchUpOptions(Packs.Seed), [before]).Single();

        Assert.NotEqual(DrawnPack.ShownBy(before.Readings), DrawnPack.ShownBy(again.Readings));
    }

    /// <summary>Causes after which a lesson stops (the powder turns dark), and slips of the pen: what is printed is what was shown.</summary>
    [Theory]
    [InlineData("copper-sulfate-hydrate", "overheated")]
    [InlineData("copper-sulfate-hydrate", "misread")]
    [InlineData("magnesium-oxide", "misread")]
    public void What_would_stop_a_lesson_and_slips_of_the_pen_are_never_planted(string id, string cause)
    {
        DrawnPack[] drawn = Packs.Drawn(Packs.Plan(BuiltInPracticals.Find(id)!), Many, oddShare: 1);

        Assert.Contains(BuiltInPracticals.Find(id)!.Faults, f => f.Cause == cause);
        Assert.DoesNotContain(drawn.SelectMany(d => d.Truth.Planted), p => p.Cause == cause);
    }

    [Fact]
    public void What_the_plan_does_not_weigh_is_not_in_a_pack_and_nor_are_answers_that_need_it()
    {
        CatchUpPack pack = Packs.Of(Packs.Plan(Given.Magnesium).WithUnread("empty"), Packs.Students(1)).Single();

        Assert.DoesNotContain(pack.Readings, r => r.Weighing.Reading == "empty");
        Assert.Equal(["massOxygen", "molesOxygen"], pack.Answers.Select(a => a.Answer.Id).Distinct());
    }
}
