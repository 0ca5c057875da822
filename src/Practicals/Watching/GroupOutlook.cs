using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Watching;

/// <summary>How a group's lesson goes on, from simulated lessons that all begin where the class is now.</summary>
/// <param name="Group">The group's number.</param>
/// <param name="ProbablyAt">The step at which it is most often in them; null where it is done or away.</param>
/// <param name="Done">When it is done with its own work, before what the class does together at the end; null where it is away.</param>
/// <param name="NextReading">When it has taken its next reading; null where none is left.</param>
/// <param name="DoneByPacking">Probability that its last reading is taken by the minute at which packing begins.</param>
public sealed record GroupOutlook(int Group, LessonStep? ProbablyAt, MinuteRange? Done, MinuteRange? NextReading, Share DoneByPacking);
