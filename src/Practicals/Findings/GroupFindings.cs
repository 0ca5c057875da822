using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>What one group's readings show.</summary>
public sealed class GroupFindings
{
    private readonly Dictionary<string, QuantityResult> byId;

    internal GroupFindings(
        GroupReadings readings,
        string name,
        IReadOnlyList<QuantityResult> quantities,
        ConstantMass? constantMass,
        Oddity oddity,
        IReadOnlyList<string> contradictions,
        GroupDiagnosis? diagnosis,
        GroupCurve? curve = null)
    {
        Readings = readings;
        Name = name;
        Quantities = quantities;
        ConstantMass = constantMass;
        Oddity = oddity;
        Contradictions = contradictions;
        Diagnosis = diagnosis;
        Curve = curve;
        byId = quantities.ToDictionary(q => q.Quantity.Id, StringComparer.Ordinal);
    }

    /// <summary>The group with its readings as written.</summary>
    public GroupReadings Readings { get; }

    /// <summary>The group's name, with the trial behind it where there is one.</summary>
    public string Name { get; }

    /// <summary>Every quantity of the practical, in its order: found, or not and why.</summary>
    public IReadOnlyList<QuantityResult> Quantities { get; }

    /// <summary>Whether heating was carried to constant mass, and what can still be unreacted; null where the
    /// practical heats nothing to constant mass.</summary>
    public ConstantMass? ConstantMass { get; }

    /// <summary>Constant mass in a few words for a table, or null. An odd result has the verdict only: its bound would take
    /// wrong readings at their word.</summary>
    public string? ConstantMassInWords => IsAnomalous || ConstantMass is { Verdict: ConstantMassVerdict.NotWeighed }
        ? ConstantMassVerdictInWords : ConstantMass?.Brief;

    /// <summary>The verdict alone, or null; likewise null where a mass after heating was given ready-made and no weighing.</summary>
    public string? ConstantMassVerdictInWords =>
        ConstantMass is { Verdict: ConstantMassVerdict.NotWeighed } && Readings.DerivedColumns.Count > 0 ? null : ConstantMass?.Words;

    /// <summary>Whether the result is to be looked into before it is pooled, with the numbers that say so.</summary>
    public Oddity Oddity { get; }

    /// <summary>Ready-made masses that the group's own readings do not bear out, a sentence each.</summary>
    public IReadOnlyList<string> Contradictions { get; }

    /// <summary>What probably happened and what to do next; null where causes were not asked for.</summary>
    public GroupDiagnosis? Diagnosis { get; }

    /// <summary>What its mass against time shows; null where the practical takes no series.</summary>
    public GroupCurve? Curve { get; }

    /// <summary>Whether the group has a result to look into, in whichever quantity.</summary>
    public bool IsAnomalous => Oddity is Oddity.Odd;

    /// <summary>Whether the group is left out of the class's pooled value of a quantity.</summary>
    public bool IsSetAside(string quantityId) => Oddity is Oddity.Odd odd && odd.SetsAside(quantityId);

    /// <summary>A quantity that was found, or null.</summary>
    public QuantityEstimate? Find(string quantityId) => byId.GetValueOrDefault(quantityId) as QuantityEstimate;
}
