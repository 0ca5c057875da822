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
    public async Task A_practical_without_a_series_has_no_such_page()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);

        Assert.Equal(HttpStatusCode.NotFound, (await device.Get("/table/points")).StatusCode);
        Assert.Null((await device.Page()).QuerySelector("a[href='/table/points']"));
    }
}
