namespace Calx.Records.Lessons;

/// <summary>Somebody in a class: a number, and a short name of the teacher's choosing. No more is kept of a person.</summary>
public sealed record Member
{
    /// <summary>Longest name.</summary>
    public const int LongestName = 40;

    /// <summary>Takes a member.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="number">The number in the class, from 1. It never passes to another.</param>
    /// <param name="name">A short name; empty where none is wanted or it was forgotten.</param>
    /// <exception cref="ArgumentException">The name is longer than <see cref="LongestName"/>, the number below 1, or there is no class.</exception>
    public Member(RecordId classId, int number, string name)
    {
        ClassId = Given.Id(classId, nameof(classId));
        Number = Given.AtLeast(1, number, nameof(number));
        Name = KeptText.MayBeEmpty(name, LongestName, nameof(name));
    }

    /// <summary>The class.</summary>
    public RecordId ClassId { get; }

    /// <summary>The number in the class, from 1.</summary>
    public int Number { get; }

    /// <summary>A short name, or empty.</summary>
    public string Name { get; }
}
