using Calx.Records.Lessons;

namespace Calx.App.Pages.Keeping;

/// <summary>Who changed what.</summary>
/// <param name="Lines">The latest first.</param>
/// <param name="Names">What they are of.</param>
public sealed record AuditModel(IReadOnlyList<AuditLine> Lines, AuditNames Names);
