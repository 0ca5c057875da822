namespace Calx.App.Checking;

/// <summary>One use of a practical, tried out on an invented class.</summary>
/// <param name="What">Which: simulate, read, analyse or mark.</param>
/// <param name="Failure">What went wrong, a sentence without a full stop; null where it worked.</param>
internal sealed record TrialStep(string What, string? Failure);
