namespace Calx.Practicals.Drafting;

/// <summary>What happens in a practical that is drafted from a few answers.</summary>
public enum DraftFamily
{
    /// <summary>A solid is heated in an open vessel and gains or loses mass.</summary>
    Heated,

    /// <summary>Things are mixed in an open vessel, and a gas leaves.</summary>
    Gas,

    /// <summary>Things are mixed in a closed vessel, and the mass stays the same.</summary>
    Closed,

    /// <summary>A solid product is collected, dried and weighed.</summary>
    Product,
}
