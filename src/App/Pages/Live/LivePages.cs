using System.Globalization;
using Calx.App.Live;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Pages.Live;

/// <summary>Gathers what the live pages show.</summary>
public sealed class LivePages(LiveDesk desk, RecordStore store)
{
    /// <summary>The live view.</summary>
    public async Task<BoardModel> Board(LessonView view, CancellationToken cancellation)
    {
        LiveFacts facts = await desk.Facts(view, cancellation);
        IReadOnlyList<GroupTile> tiles = Live.Board.Tiles(facts, await NamesOf(view, cancellation));
        return new BoardModel(
            view,
            await ClassNameOf(view, cancellation),
            desk.Time,
            tiles,
            facts.Outlook?.SentencesWith(group => tiles.FirstOrDefault(t => t.Number == group && !t.Now.IsDone)?.Step) ?? []);
    }

    /// <summary>One group's page.</summary>
    public async Task<GroupPageModel> Group(LessonView view, int number, string? fault, CancellationToken cancellation)
    {
        LiveFacts facts = await desk.Facts(view, cancellation);
        GroupFacts group = facts.Groups[number - 1];
        return new GroupPageModel(view, desk.Time, Live.Board.Tile(facts, group, await NamesOf(view, cancellation)), group, fault);
    }

    /// <summary>The projector's view.</summary>
    public async Task<ProjectorModel> Projector(LessonView view, CancellationToken cancellation)
    {
        WallFacts facts = await desk.Wall(view, cancellation);
        return new ProjectorModel(
            view,
            desk.Time,
            ClassChart.Of(
                view.Practical,
                [.. view.Groups.Select(g => g.ToString(CultureInfo.InvariantCulture))],
                facts.Findings,
                new ReportView(Causes: false, view.State.AcceptedShown, Names: false)),
            facts,
            view.State.NamesShown ? await NamesOf(view, cancellation) : new Dictionary<int, string>());
    }

    private async Task<string> ClassNameOf(LessonView view, CancellationToken cancellation) =>
        await store.FindClass(view.Room.Lesson.ClassId, cancellation) is SchoolClass known ? known.Name : "";

    private async Task<IReadOnlyDictionary<int, string>> NamesOf(LessonView view, CancellationToken cancellation) =>
        (await store.Members(view.Room.Lesson.ClassId, cancellation)).Where(m => m.Name.Length > 0).ToDictionary(m => m.Number, m => m.Name);
}
