namespace Calx.Practicals.Readings;

/// <summary>What stands beside a group's readings and is no mass.</summary>
public sealed class GroupRemarks
{
    /// <summary>Takes the remarks; null where nothing was said.</summary>
    /// <param name="arm">The arm of the practical (open, closed ...), as written.</param>
    /// <param name="time">When or for how long, as written.</param>
    /// <param name="balance">Letter or name of the balance used for all of the row, as written.</param>
    /// <param name="observations">What was seen, one phrase an entry.</param>
    public GroupRemarks(
        string? arm = null,
        string? time = null,
        string? balance = null,
        IReadOnlyList<string>? observations = null)
    {
        Arm = arm;
        Time = time;
        Balance = balance;
        Observations = observations ?? [];
    }

    /// <summary>Nothing was said.</summary>
    public static GroupRemarks None { get; } = new();

    /// <summary>The arm of the practical, as written, or null.</summary>
    public string? Arm { get; }

    /// <summary>When or for how long, as written, or null.</summary>
    public string? Time { get; }

    /// <summary>Letter or name of the balance, as written, or null.</summary>
    public string? Balance { get; }

    /// <summary>What was seen, one phrase an entry; empty where nothing was said.</summary>
    public IReadOnlyList<string> Observations { get; }
}
