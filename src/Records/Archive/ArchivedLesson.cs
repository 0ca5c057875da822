using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.Records.Archive;

/// <summary>A lesson with its whole journal.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Journal">Its entries by number.</param>
internal sealed record ArchivedLesson(Lesson Lesson, IReadOnlyList<KeptEntry> Journal);
