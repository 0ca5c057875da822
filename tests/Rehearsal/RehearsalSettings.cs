namespace Calx.Rehearsal;

/// <summary>What a rehearsed lesson is like.</summary>
public sealed record RehearsalSettings
{
    /// <summary>The practical.</summary>
    public string PracticalId { get; init; } = "magnesium-oxide";

    /// <summary>Name of the class.</summary>
    public string ClassName { get; init; } = "9F";

    /// <summary>How many groups.</summary>
    public int Groups { get; init; } = 15;

    /// <summary>Whether it is assessed: no hints for students.</summary>
    public bool Assessed { get; init; }

    /// <summary>Whether students decide first.</summary>
    public bool DecideFirst { get; init; } = true;

    /// <summary>Whether its clock has started and the groups are at work.</summary>
    public bool Begins { get; init; } = true;

    /// <summary>Names of the class's members.</summary>
    public IReadOnlyList<string> Names { get; init; } = ["Ada", "Bo", "Cleo", "Dev", "Esme", "Finn"];
}
