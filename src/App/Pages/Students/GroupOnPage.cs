using Calx.App.Serving;

namespace Calx.App.Pages.Students;

/// <summary>One group on a page: what the parts of the page are given.</summary>
/// <param name="Model">The page.</param>
/// <param name="Table">The group.</param>
public sealed record GroupOnPage(TableModel Model, GroupTable Table)
{
    /// <summary>The device.</summary>
    public Seat Seat => Model.Seat;

    /// <summary>The group's page: where its forms go back to.</summary>
    public string Address => Model.IsStation ? FormattableString.Invariant($"/table?group={Table.Number}") : "/table";
}
