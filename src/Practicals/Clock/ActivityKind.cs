namespace Calx.Practicals.Clock;

/// <summary>Kinds of activities.</summary>
internal enum ActivityKind
{
    /// <summary>Nothing follows.</summary>
    Done,

    /// <summary>Work alone, perhaps with shared things.</summary>
    Work,

    /// <summary>Something done by all together.</summary>
    Together,
}
