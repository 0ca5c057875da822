using Calx.Practicals.Marking;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What the teacher has decided on one answer of one student.</summary>
/// <param name="Overruling">The marks that hold, or null where they were taken back.</param>
/// <param name="Cell">Everything that was decided, in order.</param>
/// <param name="HasChanged">Whether the answer is another one now than when it was decided.</param>
public sealed record MarkDecision(Overruling? Overruling, CellState Cell, bool HasChanged);
