namespace Calx.Papers.Documents;

/// <summary>What a framed part of a paper is.</summary>
public enum PanelKind
{
    /// <summary>What to take care of: thick frame.</summary>
    Caution,

    /// <summary>Help for those who want it, such as words to use: thin frame.</summary>
    Help,
}
