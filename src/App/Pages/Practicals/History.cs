using System.Runtime.CompilerServices;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Findings.History;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Practicals;

/// <summary>Works out what classes found with a practical; a lesson that has not moved on is not worked out again.</summary>
public sealed class History(KnownBalances school, LessonList lessons, LessonRooms rooms, Shelf shelf, RecordStore store)
{
    /// <summary>Lessons on the page: some years of a department.</summary>
    private const int Most = 60;

    private readonly ConditionalWeakTable<LessonView, ClassFindings?> known = [];

    /// <summary>The page.</summary>
    public async Task<IResult> Page(string id, bool showsAccepted, CancellationToken cancellation)
    {
        if (shelf.Find(id) is not Practical practical)
        {
            return Show.Nothing("practical");
        }

        LessonRow[] of = [.. (await lessons.All(cancellation)).Where(r => r.Lesson.PracticalId == id && !r.Lesson.Settings.Trial)];
        LetteredBalances balances = await school.Now(cancellation);
        var rows = new List<HistoryRow>();
        var views = new List<(HistoryRow Row, LessonView View)>();
        int left = Math.Max(0, of.Length - Most);
        foreach (LessonRow row in of.Take(Most))
        {
            try
            {
                if (await Found(row, balances, cancellation) is (HistoryRow found, LessonView view))
                {
                    rows.Add(found);
                    views.Add((found, view));
                }
            }
            catch (InvalidDataException)
            {
                // Kept by a program that knew other practicals; its own page says what is wrong.
                left++;
            }
        }

        double? accepted = rows.Select(r => r.Findings.Class.Accepted).OfType<AcceptedResult.Compared>().FirstOrDefault()?.Accepted;
        ResultHistory history = ResultHistory.Of(practical, [.. rows.AsEnumerable().Reverse().Select(r => r.Result).OfType<LessonResult>()], accepted);
        return Show.Page<HistoryPage>(new HistoryModel(practical, rows, left, history, showsAccepted)
        {
            Times = HistoryTimes.Of(practical, views.Where(v => v.View.State.IsOver)),
            Accepted = (await PlanNumbers.Now(store, practical, cancellation)).Of(null),
        });
    }

    private async Task<(HistoryRow Row, LessonView View)?> Found(LessonRow row, LetteredBalances balances, CancellationToken cancellation)
    {
        if (await rooms.Find(row.Lesson.Id, cancellation) is not LessonRoom room)
        {
            return null;
        }

        LessonView view = await room.Now(cancellation);
        if (!known.TryGetValue(view, out ClassFindings? findings))
        {
            findings = await Task.Run(() => LessonFindings.OfKey(view, balances), cancellation);
            known.AddOrUpdate(view, findings);
        }

        return findings is null ? null : (new HistoryRow(row, findings), view);
    }
}
