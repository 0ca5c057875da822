using Calx.Measurement.Weighing;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Papers.Week;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The technician's week.</summary>
public sealed class WeekSheetTests
{
    private static readonly DateOnly Thursday = new(2026, 11, 26);

    [Theory]
    [InlineData("2026-11-23", "2026-11-23")]
    [InlineData("2026-11-26", "2026-11-23")]
    [InlineData("2026-11-29", "2026-11-23")]
    public void A_week_begins_on_its_Monday(string day, string monday) =>
        Assert.Equal(DateOnly.Parse(monday, System.Globalization.CultureInfo.InvariantCulture), TechnicianWeek.MondayOf(DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture)));

    [Fact]
    public void Lessons_stand_by_their_periods_a_number_before_a_word()
    {
        WeekDay day = Assert.Single(Week(Lesson("11"), Lesson("lunch"), Lesson(null), Lesson("P2"), Lesson("9")).Days);
        Assert.Equal(["P2", "9", "11", "lunch", null], day.Lessons.Select(l => l.Occasion.Period));
    }

    /// <summary>Worked by hand. Tongs never break, so each lesson has one spare: 6 + 1 and 5 + 1 at once in period 3, 8 + 1 in period 5.</summary>
    [Fact]
    public void Pieces_are_summed_over_one_period_and_what_is_used_up_over_the_week()
    {
        TechnicianWeek week = Week(Lesson("3", 6), Lesson(" 3 ", 5), Lesson("5", 8), Lesson("1", 4, Thursday.AddDays(1)));
        Assert.Equal(13, Item(week.Days[0], "tongs").Amount);
        Assert.Equal(5, Item(week.Days[1], "tongs").Amount);
        // 0.24 g a group, a fifth more.
        Assert.Equal((6 + 5 + 8) * 0.24 * 1.2, Item(week.Days[0], "magnesium ribbon").Amount, 1e-9);
        WeekItem ribbon = Assert.Single(week.Chemicals);
        Assert.Equal((6 + 5 + 8 + 4) * 0.24 * 1.2, ribbon.Amount, 1e-9);
        Assert.Equal(4, ribbon.Lessons.Count);
        Assert.Null(ribbon.LengthInMetres);
    }

    /// <summary>Six groups of a plan that leaves firing and cutting to the class: 5 + 6 × 0.5 = 8 min to look the crucibles over, 10 min for the balances.</summary>
    [Fact]
    public void Minutes_of_preparation_are_those_of_the_requisitions()
    {
        WeekDay day = Week(Lesson("3", 6), Lesson("5", 6)).Days[0];
        Assert.Equal([8, 10, 8, 10], day.Preparation.Select(p => p.Minutes));
        Assert.Equal(36, day.PreparationInMinutes);
    }

    [Fact]
    public void A_metre_that_was_weighed_gives_a_length_and_one_lesson_that_does_not_know_takes_it_away()
    {
        var stock = new PlanStock(0.9, new Dictionary<string, double>());
        Assert.Equal(6 * 0.24 * 1.2 / 0.9, Assert.Single(Week(Lesson("3", 6, stock: stock)).Chemicals).LengthInMetres!.Value, 1e-9);
        Assert.Null(Assert.Single(Week(Lesson("3", 6, stock: stock), Lesson("4")).Chemicals).LengthInMetres);
    }

    [Fact]
    public void What_is_known_to_be_there_is_held_against_lessons_of_one_period_only()
    {
        WeekLesson[] together = [Lesson("3", 6, has: 8), Lesson("3", 6)];
        Assert.Contains("together they want 14 of ‘burner, tripod and heat-resistant mat’, and there are 8.", Assert.Single(Week(together).Warnings), StringComparison.Ordinal);
        Assert.Empty(Week(Lesson("3", 6, has: 8), Lesson("4", 6)).Warnings);
        Assert.Empty(Week(Lesson("3", 6, has: 16), Lesson("3", 6)).Warnings);
        Assert.Contains("balances", Assert.Single(new TechnicianWeek(Thursday.AddDays(-3), [Lesson("3"), Lesson("3")], balances: 3).Warnings), StringComparison.Ordinal);
        Assert.Empty(new TechnicianWeek(Thursday.AddDays(-3), [Lesson("3"), Lesson("3", isCover: true)], balances: 3).Warnings);
        Assert.Contains("says no period", Assert.Single(Week(Lesson("3"), Lesson(null)).Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lesson_without_practical_work_wants_nothing_and_leaves_nothing_hot()
    {
        WeekDay day = Week(Lesson("3", isCover: true)).Days[0];
        Assert.Empty(day.Items);
        Assert.Empty(day.Preparation);
        Assert.Empty(day.Hot);
        Assert.Single(Week(Lesson("3")).Days[0].Hot);
    }

    [Fact]
    public void The_sheet_counts_out_and_back_and_is_valid_for_a_word_processor()
    {
        Paper sheet = WeekSheet.Of(Week(Lesson("3", 6), Lesson("5", 8), Lesson("1", isCover: true)), "25 November 2026", isInvented: true);
        string text = Written.Of(sheet);
        Assert.Contains("Out\nBack", text, StringComparison.Ordinal);
        Assert.Contains("cover lesson, nothing is wanted", text, StringComparison.Ordinal);
        Assert.Contains("To prepare: 37 min", text, StringComparison.Ordinal);
        Assert.Contains("invented", sheet.Heads.Foot, StringComparison.Ordinal);
        using var file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(sheet)), isEditable: false);
        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
    }

    /// <summary>A week that says all that a week can: warnings of each kind, a cover lesson, trials, a length, something hot.</summary>
    internal static Paper Full(PaperLanguage language, string printed) => WeekSheet.Of(
        new TechnicianWeek(
            Thursday.AddDays(-3),
            [
                Lesson("3", 6, has: 8), Lesson("3", 5), Lesson(null, 4, Thursday.AddDays(1)), Lesson("2", 4, Thursday.AddDays(1), trials: 2), Lesson("4", 4, Thursday.AddDays(2), isCover: true),
                Lesson("5", 4, Thursday.AddDays(3), stock: new PlanStock(0.9, new Dictionary<string, double>())),
            ],
            balances: 3),
        printed,
        PaperLook.Usual with { Language = language },
        isInvented: true);

    internal static Paper Empty(PaperLanguage language) => WeekSheet.Of(Week(), look: PaperLook.Usual with { Language = language });

    private static WeekItem Item(WeekDay day, string begins) => day.Items.Single(i => i.Label.StartsWith(begins, StringComparison.Ordinal));

    private static TechnicianWeek Week(params WeekLesson[] lessons) => new(Thursday.AddDays(-3), lessons);

    private static WeekLesson Lesson(string? period, int groups = 6, DateOnly? date = null, bool isCover = false, PlanStock? stock = null, int? has = null, int trials = 1)
    {
        var plan = new PlanSettings(BuiltInPracticals.Find("magnesium-oxide")!, groups, [new Balance(0.01), new Balance(0.01)], 60).WithTrials(trials);
        return new WeekLesson(
            date ?? Thursday, new PaperOccasion(FormattableString.Invariant($"class of {groups}"), null, "Lab 2", period, null, null), has is int burners ? plan.WithKit("burner", burners) : plan, stock, isCover);
    }
}
