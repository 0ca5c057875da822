namespace Calx.Chemistry.Formulas;

/// <summary>Where a run of characters stands.</summary>
public enum FormulaLine
{
    /// <summary>On the line.</summary>
    Base,

    /// <summary>Below the line: numbers of atoms.</summary>
    Subscript,

    /// <summary>Above the line: the charge.</summary>
    Superscript,
}

/// <summary>A run of a formula for display. <c>default</c> is an empty run.</summary>
/// <param name="Text">Letters, digits, brackets, the middle dot or signs; the minus is the typographic one.</param>
/// <param name="Line">Where the run stands.</param>
public readonly record struct FormulaPiece(string Text, FormulaLine Line);
