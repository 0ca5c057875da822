namespace Calx.Practicals.Definition;

/// <summary>What a practical is called and what it asks.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Version">Number of this version of its file, from 1.</param>
/// <param name="Title">Its title.</param>
/// <param name="Question">The question of the lesson.</param>
/// <param name="Family">What happens in it, where the file says so.</param>
internal sealed record PracticalHeading(string Id, int Version, string Title, string Question, PracticalFamily? Family);
