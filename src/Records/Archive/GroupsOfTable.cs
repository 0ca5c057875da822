using Calx.Records.Journal;

namespace Calx.Records.Archive;

/// <summary>What the groups of a lesson are called in its table of readings. Records does not know what a happening means, so that
/// whoever does says which readings are not a group's own.</summary>
/// <param name="journal">The lesson's whole journal.</param>
/// <returns>The name by a group's number and trial.</returns>
public delegate Func<int, int, string> GroupsOfTable(LessonJournal journal);
