using Calx.Practicals.Definition;

namespace Calx.App.Own;

/// <summary>A teacher's own file of a practical.</summary>
/// <param name="Name">The file's name.</param>
/// <param name="Id">The id that it gives itself, as far as that can be told without reading the rest.</param>
/// <param name="Practical">The practical, or null where the file has faults.</param>
/// <param name="Faults">What is wrong with it, a line each.</param>
internal sealed record OwnFile(string Name, string? Id, Practical? Practical, IReadOnlyList<string> Faults);
