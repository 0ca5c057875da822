using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition;

/// <summary>A substance of a practical, in the form in which it is used: the metal and its oxide film are two.</summary>
public sealed class Material(
    string id, string label, Formula? formula, string? form, bool air, bool flammableLiquid, FilePosition at)
{
    /// <summary>Its id, unique among the materials.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its formula, or null for a mixture without one.</summary>
    public Formula? Formula { get; } = formula;

    /// <summary>Its formula in plain text, or null.</summary>
    public string? FormulaText => Formula?.ToString();

    /// <summary>Its form in words (ribbon, powder, solution of 1 mol/dm³), or null.</summary>
    public string? Form { get; } = form;

    /// <summary>Whether it is of the air: unlimited, never on the pan; a product of the air leaves.</summary>
    public bool Air { get; } = air;

    /// <summary>Whether it is a liquid whose vapour a naked flame can light.</summary>
    public bool FlammableLiquid { get; } = flammableLiquid;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
