namespace Calx.App.Live;

/// <summary>What becomes of units in a lesson's answers. At most one mark a paper is lost for them.</summary>
public enum UnitsRule
{
    /// <summary>A wrong unit costs; none at all does not, since headings have them.</summary>
    WrongOnes,

    /// <summary>Students were asked to write them: a missing one costs like a wrong one.</summary>
    Asked,

    /// <summary>They cost nothing.</summary>
    Free,
}
