using System.Collections.Concurrent;
using Calx.App.Live;
using Calx.Chemistry.Elements;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;

namespace Calx.App.Pages.CatchUp;

/// <summary>
/// The packs that a lesson keeps, without names. What was handed out never changes, and reading it takes long, so that it is read once for
/// each time a lesson is opened: it is asked for with every answer that is marked.
/// </summary>
/// <param name="plan">The lesson's plan.</param>
public sealed class PacksOfLesson(PlanSettings plan)
{
    private readonly ConcurrentDictionary<(int Member, string Text), CatchUpPack?> packs = [];
    private readonly Lazy<PackWorking> working = new(() => new PackWorking(plan, AtomicWeights.Iupac2024));

    /// <summary>The pack of a student by number in the class, or null.</summary>
    public CatchUpPack? Find(LessonView view, int member) => CatchUpDesk.Entries(view).FirstOrDefault(e => e.Member == member) is { Text: string text }
        ? packs.GetOrAdd((member, text), _ => KeptPackText.Read(text, CatchUpStudent.Numbered(member, ""), plan.Practical, working.Value)) : null;
}
