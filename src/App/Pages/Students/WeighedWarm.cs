namespace Calx.App.Pages.Students;

/// <summary>A weighing that was taken too warm: the group lets it cool and weighs again, and the warm one stays, struck through.</summary>
/// <param name="Entry">Id of its entry.</param>
/// <param name="What">Id of the reading.</param>
/// <param name="Label">Its name.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Balance">Letter of its balance, or empty.</param>
/// <param name="Vessel">Number of its vessel, or empty.</param>
public sealed record WeighedWarm(string Entry, string What, string Label, string Unit, string Balance, string Vessel)
{
    /// <summary>Why the weighing replaces the one before it.</summary>
    public const string Reason = "weighed again when cool";
}
