namespace Calx.Records.Lessons;

/// <summary>A class of one school year.</summary>
public sealed record SchoolClass
{
    /// <summary>Longest year or name.</summary>
    public const int LongestName = 40;

    /// <summary>Takes a class.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="year">The school year as the school writes it, such as <c>2026/27</c>.</param>
    /// <param name="name">Its name, such as <c>9F</c>.</param>
    /// <param name="namesForgotten">Whether its members' names were taken out.</param>
    /// <exception cref="ArgumentException">A text is blank or longer than <see cref="LongestName"/>, or there is no id.</exception>
    public SchoolClass(RecordId id, string year, string name, bool namesForgotten)
    {
        Id = Given.Id(id, nameof(id));
        Year = KeptText.Needed(year, LongestName, nameof(year));
        Name = KeptText.Needed(name, LongestName, nameof(name));
        NamesForgotten = namesForgotten;
    }

    /// <summary>Its id.</summary>
    public RecordId Id { get; }

    /// <summary>The school year.</summary>
    public string Year { get; }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Whether its members' names were taken out.</summary>
    public bool NamesForgotten { get; }
}
