using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Practicals.Readings;

namespace Calx.App.Tests.Pages.Students;

/// <summary>Mass against time typed in a lesson, without any script: point by point, and all at once from a paper slip.</summary>
public sealed class PointsTests
{
    [Fact]
    public async Task A_group_types_points_as_written_and_the_analysis_has_them_with_the_readings_of_the_sheet()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        Assert.NotNull((await device.Page()).QuerySelector("a[href='/table/points']"));
        await device.Tell(Entries.Reading("start", "136.50"));
        await device.Send("/table/points", ("point-0.5-min", "136.30"));
        await device.Send("/table/points", ("point-1-min", "136,10"), ("point-2-min", ""));

        GroupReadings group = (await (await lesson.Room()).Now(CancellationToken.None)).ReadingsOf(2);
        Assert.Equal(["0 136.50", "0.5 136.30", "1 136.10"], group.Series!.Points.Select(p => $"{p.Time} {p.Value}"));
        IDocument page = await device.Page("/table/points");
        Assert.Contains("136.30 g", page.QuerySelector("[data-minutes='0.5']")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector("input[name='point-1.5-min']"));
    }

    [Fact]
    public async Task A_point_that_is_kept_is_not_written_over_by_the_group_and_no_number_is_told()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        await device.Send("/table/points", ("point-0.5-min", "136.30"));
        HttpResponseMessage again = await device.Send("/table/points", ("point-0.5-min", "135.30"), ("point-1-min", "soon"));

        string said = (await device.Page(again.Headers.Location!.ToString())).QuerySelector("[role=alert]")!.TextContent;
        Assert.Contains("0.5 min: 136.30 is kept already", said, StringComparison.Ordinal);
        Assert.Contains("'soon' is not a number", said, StringComparison.Ordinal);
        LessonView view = await (await lesson.Room()).Now(CancellationToken.None);
        Assert.Equal("136.30", view.ReadingsOf(2).Series!.Points.Single().Value.ToString());
    }

    [Fact]
    public async Task Points_sent_once_more_with_a_comma_are_no_fault()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        await device.Send("/table/points", ("point-0.5-min", "136,30"));
        HttpResponseMessage again = await device.Send("/table/points", ("point-0.5-min", "136,30"), ("point-1-min", "136.10"));

        Assert.Equal("/table/points", again.Headers.Location!.ToString());
        Assert.Equal(2, (await (await lesson.Room()).Now(CancellationToken.None)).ReadingsOf(2).Series!.Points.Count);
    }

    [Fact]
    public async Task Stop_fills_the_page_of_points_and_the_end_closes_it()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        await lesson.Teacher(Acts.Began);
        await lesson.Teacher(Acts.Stop);
        Assert.Equal("Hands off.Stand still.Look at me.", (await device.Page("/table/points")).QuerySelector("[data-live] .fill.stop")!.TextContent);
        await lesson.Teacher(Acts.Resume);
        IDocument page = await device.Page("/table/points");
        Assert.Null(page.QuerySelector(".fill.stop"));
        Assert.Equal(19, page.QuerySelectorAll("input[inputmode=decimal]").Length);
        await lesson.Teacher(Acts.Ended);
        Assert.Empty((await device.Page("/table/points")).QuerySelectorAll("input, button.tall[type=submit]"));
    }

    [Fact]
    public async Task The_step_of_reading_leads_to_the_points_and_the_sent_part_counts_them()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        foreach ((string what, string written) in ((string, string)[])[("flask", "82.50"), ("withAcid", "123.20"), ("start", "140.40")])
        {
            await device.Tell(Entries.Reading(what, written));
        }

        await device.Send("/table/points", ("point-0.5-min", "140.20"));
        IDocument page = await device.Page();
        Assert.NotNull(page.QuerySelector("#now > .place[data-step=run] a[href='/table/points']"));
        Assert.Contains("1 of 19 points", page.QuerySelector("#sent")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_teacher_types_points_of_all_groups_from_slips_and_changes_one_with_a_reason()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        string address = $"/lessons/{lesson.Lesson.Id}/points";
        var teacher = new Device(lesson.Host.Browser());
        await teacher.Send(address, ("b.1", "A"), ("r.1.1.point-0.5-min", "136.30"), ("r.3.1.point-2-min", "141.75"));
        Assert.Contains("says why", Uri.UnescapeDataString((await teacher.Send(address, ("r.1.1.point-0.5-min", "136.03"))).Headers.Location!.ToString()), StringComparison.Ordinal);
        await teacher.Send(address, ("b.1", "A"), ("r.1.1.point-0.5-min", "136.03"), ("reason", "the paper record says so"));

        Assert.Equal("136.03", (await teacher.Page(address)).QuerySelector("input[name='r.1.1.point-0.5-min']")!.GetAttribute("value"));
        Assert.Equal("141.75", (await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/3/points")).QuerySelector("input[name='r.3.1.point-2-min']")!.GetAttribute("value"));
        IDocument cell = await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/1/cells/1/point-0.5-min");
        Assert.Equal(("Group 1: Mass at 0.5 min", "136.30"), (cell.QuerySelector("h1")!.TextContent, cell.QuerySelector("s")!.TextContent.Trim()));
        Assert.Equal("136.30", (await (await lesson.Device(1)).Page("/table/points")).QuerySelector("[data-point='point-0.5-min'] s")!.TextContent);
    }

    [Fact]
    public async Task A_group_that_lost_its_sample_reads_points_off_a_simulated_balance()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device device = await lesson.Device(2);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.Simulated, 2);
        decimal[] shown = [.. (await device.Page("/table/points")).QuerySelectorAll("[data-point] small strong").Select(e => decimal.Parse(e.TextContent.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture))];

        // The flask gets lighter: 19 points, and the last well below the first (0.88 g of carbon dioxide are due in all: 40.66 g of acid, a share of 0.03587 HCl).
        Assert.Equal(19, shown.Length);
        Assert.InRange(shown[0] - shown[^1], 0.2m, 2m);
    }

    [Fact]
    public async Task Rate_and_half_life_read_off_the_curve_are_asked_on_devices()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        string[] asked = [.. Calx.App.Pages.Answers.AnswerQuestions.Of(await (await lesson.Room()).Now(CancellationToken.None)).Select(q => q.Id)];
        Assert.Contains("rateStart", asked);
        Assert.Contains("timeHalf", asked);
    }

    [Fact]
    public async Task Two_devices_that_send_one_point_differently_are_told_and_the_teacher_sees_both()
    {
        await using Taught lesson = await Taught.Start(practicalId: "marble-and-acid");
        Device one = await lesson.Device(2), other = await lesson.Device(2);
        await one.Tell(Entries.Reading("point-0.5-min", "136.30"));
        await other.Tell(Entries.Reading("point-0.5-min", "136.03"));

        string said = (await one.Page("/table/points")).QuerySelector("[data-point='point-0.5-min']")!.TextContent;
        Assert.Contains("136.30 g", said, StringComparison.Ordinal);
        Assert.Contains("also sent: 136.03", said, StringComparison.Ordinal);
        IElement both = (await new Device(lesson.Host.Browser()).Page($"/lessons/{lesson.Lesson.Id}/points")).QuerySelector("a.more")!;
        Assert.Equal("two readings", both.TextContent);
        Assert.EndsWith("/groups/2/cells/1/point-0.5-min", both.GetAttribute("href"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_practical_without_a_series_has_no_such_page()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);

        Assert.Equal(HttpStatusCode.NotFound, (await device.Get("/table/points")).StatusCode);
        Assert.Null((await device.Page()).QuerySelector("a[href='/table/points']"));
    }
}
