using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Practicals.Marking;
using Calx.Records.Journal;

namespace Calx.App.Tests.Live;

/// <summary>How a lesson's answers are marked, as its journal keeps it.</summary>
public sealed class MarkingSettingsTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_lesson_of_which_nothing_was_set_asks_all_and_gives_feedback_later()
    {
        await using Taught taught = await Taught.Start();
        MarkingSettings settings = await Now(taught);
        Assert.True(settings.Asks("massMagnesium") && settings.Asks("what-happened"));
        Assert.Equal((FeedbackTime.Later, false), (settings.Feedback, settings.ShowsFeedback));
        Assert.Equal(MarkingPolicy.Usual, settings.Policy);
    }

    [Fact]
    public async Task What_was_set_last_holds_and_what_was_set_before_stays_in_the_journal()
    {
        await using Taught taught = await Taught.Start();
        await Set(taught, MarkingSettings.Usual with { Asked = ["ratio"], Weights = "school-0dp", Feedback = FeedbackTime.Never });
        MarkingSettings second = MarkingSettings.Usual with
        {
            Asked = ["ratio", "better"], Weights = "school-1dp", EarlyRounding = EarlyRounding.OneMarkOff, Figures = false, Units = UnitsRule.Asked, Feedback = FeedbackTime.AtOnce,
        };
        await Set(taught, second);
        MarkingSettings now = await Now(taught);
        Assert.Equal(second.Asked!, now.Asked!);
        Assert.Equal(second with { Asked = now.Asked }, now);
        Assert.True(now.Asks("better") && !now.Asks("massMagnesium"));
        Assert.Equal(new MarkingPolicy(EarlyRounding.OneMarkOff, FiguresPenalty: 0, UnitPenalty: 1, UnitsAsked: true), now.Policy);
        Assert.Equal("school-1dp", Assert.Single(now.Sets).Name);
        Assert.True(now.ShowsFeedback);
        Assert.Equal(2, (await taught.Journal()).Count(e => e.Cell.What == Acts.Marking));
    }

    [Theory]
    [InlineData(FeedbackTime.AtOnce, false, false, true)]
    [InlineData(FeedbackTime.AtOnce, true, false, false)]
    [InlineData(FeedbackTime.AtOnce, true, true, true)]
    [InlineData(FeedbackTime.Later, false, false, false)]
    [InlineData(FeedbackTime.Later, false, true, true)]
    [InlineData(FeedbackTime.Never, false, true, false)]
    public async Task Feedback_is_shown_at_once_or_once_opened_and_in_an_assessed_lesson_never_at_once(FeedbackTime time, bool assessed, bool opened, bool shown)
    {
        await using Taught taught = await Taught.Start(assessed: assessed);
        await Set(taught, MarkingSettings.Usual with { Feedback = time });
        if (opened)
        {
            await (await taught.Room()).Append(MarkingSettings.OpeningEntry(NewEntryId.Draw(), true, DateTimeOffset.UnixEpoch), Cancel);
        }

        Assert.Equal(shown, (await Now(taught)).ShowsFeedback);
    }

    [Fact]
    public async Task Feedback_that_was_opened_is_closed_again()
    {
        await using Taught taught = await Taught.Start();
        await (await taught.Room()).Append(MarkingSettings.OpeningEntry(NewEntryId.Draw(), true, DateTimeOffset.UnixEpoch), Cancel);
        await (await taught.Room()).Append(MarkingSettings.OpeningEntry(NewEntryId.Draw(), false, DateTimeOffset.UnixEpoch), Cancel);
        Assert.False((await Now(taught)).ShowsFeedback);
    }

    [Theory]
    [InlineData("")]
    [InlineData("yes")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("{\"asked\":7,\"weights\":\"none such\",\"figures\":\"no\",\"units\":[],\"feedback\":\"tomorrow\"}")]
    public void A_text_that_cannot_be_read_is_as_usual(string text) => Assert.Equal(MarkingSettings.Usual, MarkingSettings.Read(text));

    private static async Task Set(Taught taught, MarkingSettings settings) =>
        Assert.IsType<AppendResult.Added>(await (await taught.Room()).Append(settings.Entry(NewEntryId.Draw(), DateTimeOffset.UnixEpoch), Cancel));

    private static async Task<MarkingSettings> Now(Taught taught) => MarkingSettings.Of(await (await taught.Room()).Now(Cancel));
}
