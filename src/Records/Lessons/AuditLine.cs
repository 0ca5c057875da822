namespace Calx.Records.Lessons;

/// <summary>Who changed what. Entries of the journal have no line here: they are their own record.</summary>
/// <param name="Number">Its place, from 1.</param>
/// <param name="At">When.</param>
/// <param name="By">Who.</param>
/// <param name="What">What was done, such as <c>lesson-changed</c>.</param>
/// <param name="Subject">To what, such as <c>lesson 7k2m…</c>.</param>
/// <param name="Before">What it was, JSON of the parts that changed; null for what is new.</param>
/// <param name="After">What it became, JSON; null for what is gone, and for secrets.</param>
public sealed record AuditLine(long Number, DateTimeOffset At, string By, string What, string Subject, string? Before, string? After);
