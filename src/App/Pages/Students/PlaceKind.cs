namespace Calx.App.Pages.Students;

/// <summary>What a group does at a place of its way.</summary>
public enum PlaceKind
{
    /// <summary>A step without a reading.</summary>
    Do,

    /// <summary>It takes a reading.</summary>
    Read,

    /// <summary>It says whether it heats again.</summary>
    Decide,

    /// <summary>Nothing is left.</summary>
    End,
}
