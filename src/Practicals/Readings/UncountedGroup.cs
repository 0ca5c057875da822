namespace Calx.Practicals.Readings;

/// <summary>A group whose readings are not its own, so that no result of the class counts it. A closed set.</summary>
public abstract record UncountedGroup
{
    private UncountedGroup(string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name;
    }

    /// <summary>The group's name.</summary>
    public string Name { get; }

    /// <summary>Its readings are simulated.</summary>
    public sealed record Simulated : UncountedGroup
    {
        /// <summary>Takes the group.</summary>
        /// <param name="name">Its name, with or without the mark of simulated readings; not empty.</param>
        public Simulated(string name)
            : base(GroupReadings.WithoutMark(name))
        {
        }
    }

    /// <summary>It lost its sample and works with the readings of another group, which are counted there.</summary>
    public sealed record Joined : UncountedGroup
    {
        /// <summary>Takes the group and the other.</summary>
        /// <param name="name">Its name; not empty.</param>
        /// <param name="other">Name of the group whose readings it uses; not empty.</param>
        public Joined(string name, string other)
            : base(name)
        {
            ArgumentException.ThrowIfNullOrWhiteSpace(other);
            Other = other;
        }

        /// <summary>Name of the group whose readings it uses.</summary>
        public string Other { get; }
    }
}
