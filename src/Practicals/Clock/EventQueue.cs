namespace Calx.Practicals.Clock;

/// <summary>
/// What ends when, in a total order: by minute, then by priority, then by the order in which it was put in. The same
/// lesson is therefore the same on every machine, ties and all. A binary heap.
/// </summary>
internal sealed class EventQueue(int capacity)
{
    private Entry[] heap = new Entry[Math.Max(capacity, 1)];
    private long sequence;

    /// <summary>How many are waiting.</summary>
    public int Count { get; private set; }

    /// <summary>Takes everything out.</summary>
    public void Clear()
    {
        Count = 0;
        sequence = 0;
    }

    /// <summary>Puts one in.</summary>
    /// <param name="minute">When.</param>
    /// <param name="priority">The lower comes first among those of one minute.</param>
    /// <param name="person">Whose.</param>
    public void Add(double minute, int priority, int person)
    {
        if (Count == heap.Length)
        {
            Array.Resize(ref heap, 2 * Count);
        }

        var entry = new Entry(minute, priority, sequence++, person);
        int at = Count++;
        while (at > 0 && entry.IsBefore(heap[(at - 1) / 2]))
        {
            heap[at] = heap[(at - 1) / 2];
            at = (at - 1) / 2;
        }

        heap[at] = entry;
    }

    /// <summary>Takes the first one out.</summary>
    /// <exception cref="InvalidOperationException">None is left.</exception>
    public (double Minute, int Person) Next()
    {
        if (Count == 0)
        {
            throw new InvalidOperationException("Nothing is left in the queue of events.");
        }

        Entry first = heap[0];
        Entry last = heap[--Count];
        int at = 0;
        for (int child = 1; child < Count; child = (2 * at) + 1)
        {
            if (child + 1 < Count && heap[child + 1].IsBefore(heap[child]))
            {
                child++;
            }

            if (!heap[child].IsBefore(last))
            {
                break;
            }

            heap[at] = heap[child];
            at = child;
        }

        heap[at] = last;
        return (first.Minute, first.Person);
    }

    private readonly record struct Entry(double Minute, int Priority, long Sequence, int Person)
    {
        public bool IsBefore(Entry other) =>
            Minute != other.Minute ? Minute < other.Minute
            : Priority != other.Priority ? Priority < other.Priority
            : Sequence < other.Sequence;
    }
}
