namespace Calx.Practicals.Marking;

/// <summary>An overruling that was kept and not used.</summary>
/// <param name="Overruling">The overruling.</param>
/// <param name="Reason">Why it could not be used.</param>
public sealed record LeftOverruling(Overruling Overruling, string Reason);
