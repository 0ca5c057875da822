namespace Calx.Practicals.Definition.Source;

/// <summary>Which sections of a file could be read well enough for others to be held against them, so that one fault does not hide
/// the next.</summary>
internal sealed class SoundSections(FaultList faults)
{
    private readonly HashSet<FileSection> spoilt = [];

    /// <summary>Reads a section and notes whether a fault spoilt it.</summary>
    public T Read<T>(FileSection section, Func<T> read)
    {
        int before = faults.Spoiling;
        T value = read();
        if (faults.Spoiling > before)
        {
            spoilt.Add(section);
        }

        return value;
    }

    /// <summary>Whether all of some sections can be relied on.</summary>
    public bool Are(params ReadOnlySpan<FileSection> sections)
    {
        foreach (FileSection section in sections)
        {
            if (spoilt.Contains(section))
            {
                return false;
            }
        }

        return true;
    }
}
