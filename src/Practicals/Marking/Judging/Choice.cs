namespace Calx.Practicals.Marking.Judging;

/// <summary>One of the answers to choose from.</summary>
/// <param name="Id">Its id in data.</param>
/// <param name="Label">What the student reads.</param>
public sealed record Choice(string Id, string Label);
