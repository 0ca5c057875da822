using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>An entry whose sender waits to hear what became of it.</summary>
internal sealed record WaitingEntry(RecordId Lesson, JournalEntry Entry)
{
    public TaskCompletionSource<AppendResult> Answer { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);
}
