using Calx.Practicals.Definition.Source;

namespace Calx.Practicals.Definition;

/// <summary>A practical as far as its file could be read: harmless values stand in for what has a fault. For checks, never for use.</summary>
/// <param name="Practical">What was read.</param>
/// <param name="Sections">Which sections can be relied on.</param>
/// <param name="Root">The file's nodes, for places.</param>
internal sealed record PracticalDraft(Practical Practical, SoundSections Sections, FileNode Root);
