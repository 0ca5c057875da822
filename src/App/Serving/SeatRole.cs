namespace Calx.App.Serving;

/// <summary>What a device in a lesson is for.</summary>
public enum SeatRole
{
    /// <summary>It has joined and not yet taken a group.</summary>
    Joined,

    /// <summary>It types for one group.</summary>
    Group,

    /// <summary>It stands at a balance and types for every group.</summary>
    Station,
}
