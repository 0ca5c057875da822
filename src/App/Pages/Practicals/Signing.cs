using Calx.App.Live;
using Calx.App.Serving;
using Calx.Practicals.Clock;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Practicals;

/// <summary>Takes a teacher's word that a plan of a practical was checked and tried out.</summary>
public static class Signing
{
    /// <summary>Most characters of initials.</summary>
    public const int LongestInitials = 12;

    /// <summary>Keeps it, with the time; returns why not, or null.</summary>
    /// <param name="form">The form with the tick and the initials.</param>
    /// <param name="plan">The plan that is signed for.</param>
    /// <param name="context">The request.</param>
    /// <param name="store">The records.</param>
    /// <param name="clock">The time.</param>
    public static async Task<string?> Take(FormFields form, PlanSettings plan, HttpContext context, RecordStore store, TimeProvider clock)
    {
        if (!form.IsTicked("checked"))
        {
            return "Tick that it was checked and tried out; otherwise there is nothing to sign.";
        }

        string initials = form["initials"];
        if (initials.Length is 0 or > LongestInitials)
        {
            return $"Initials of 1 to {LongestInitials} characters are expected.";
        }

        var signature = new Signature(plan.Practical.Id, plan.Practical.Version, SafetyFingerprint.Of(plan), initials, clock.GetUtcNow());
        return (await store.Sign(signature, Visitor.TeachersDevice, context.RequestAborted)).Fault();
    }
}
