using System.Runtime.CompilerServices;
using Calx.Practicals.Clock;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>
/// Whether students may see a practical: only after the teacher has signed that this practical, with these amounts and steps, was
/// checked against the employer's risk assessment and tried out.
/// </summary>
public sealed class SafetyGate(RecordStore store)
{
    private readonly ConditionalWeakTable<LessonRoom, SafetyGate> open = [];

    /// <summary>Whether a lesson's pages and slips are open. A trial run always is: trying out comes before signing.</summary>
    public async Task<bool> IsOpen(LessonRoom room, CancellationToken cancellation)
    {
        // A signature stays, so a plan that is open stays open, and every entry of a lesson asks this.
        if (room.Lesson.Settings.Trial || open.TryGetValue(room, out _))
        {
            return true;
        }

        // Nothing is handled in a cover lesson, so nothing waits for a check; asked anew each time, since it may be turned back.
        if ((await room.Now(cancellation)).State.IsCover)
        {
            return true;
        }

        bool signed = await SignatureFor(room.Plan, cancellation) is not null;
        if (signed)
        {
            open.AddOrUpdate(room, this);
        }

        return signed;
    }

    /// <summary>The last signature for just this plan of a practical, or null.</summary>
    public async Task<Signature?> SignatureFor(PlanSettings plan, CancellationToken cancellation)
    {
        string fingerprint = SafetyFingerprint.Of(plan);
        return (await store.Signatures(plan.Practical.Id, cancellation)).Where(s => s.Fingerprint == fingerprint).MaxBy(s => s.At);
    }
}
