namespace Calx.Practicals.Definition.Source;

/// <summary>All ids that one practical declares, by what they are ids of.</summary>
internal sealed class IdTables
{
    public IdTable Materials { get; } = new("material", isNeeded: true);

    public IdTable Reactions { get; } = new("reaction");

    public IdTable Parts { get; } = new("part");

    public IdTable Places { get; } = new("place");

    public IdTable Gauges { get; } = new("gauge");

    public IdTable Parameters { get; } = new("parameter", isNeeded: true);

    public IdTable Arms { get; } = new("arm");

    public IdTable Readings { get; } = new("reading", isNeeded: true);

    public IdTable Columns { get; } = new("column");

    public IdTable Quantities { get; } = new("quantity", isNeeded: true);

    public IdTable Curves { get; } = new("quantity of the curve");

    public IdTable Conclusions { get; } = new("conclusion");

    public IdTable Alternatives { get; } = new("alternative");

    public IdTable Answers { get; } = new("answer");

    public IdTable Causes { get; } = new("fault of this practical with the cause");

    public IdTable Observations { get; } = new("observation");

    public IdTable Actions { get; } = new("action");

    public IdTable Conditions { get; } = new("condition");

    public IdTable Kit { get; } = new("piece of kit", isNeeded: true);

    public IdTable Steps { get; } = new("step");

    public IdTable Questions { get; } = new("question");

    public IdTable Drawings { get; } = new("drawing");
}
