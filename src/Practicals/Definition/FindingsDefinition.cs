namespace Calx.Practicals.Definition;

/// <summary>What the class is judged on.</summary>
public sealed class FindingsDefinition(
    string key,
    string change,
    string sample,
    ExpectedChange expect,
    ConstantMassDefinition? constantMass,
    string? emptyAdvice,
    FormulaSearch? formula,
    IReadOnlyList<Alternative> alternatives,
    AsExpectedDefinition? asExpected,
    DecisionDefinition? decision,
    string? noAccepted,
    FilePosition at)
{
    /// <summary>Id of the quantity on which the class is judged.</summary>
    public string Key { get; } = key;

    /// <summary>Id of the quantity that is the change of mass.</summary>
    public string Change { get; } = change;

    /// <summary>Id of the quantity that is the mass of the sample.</summary>
    public string Sample { get; } = sample;

    /// <summary>Which way the mass goes.</summary>
    public ExpectedChange Expect { get; } = expect;

    /// <summary>When two weighings count as the same; null where nothing is heated to constant mass.</summary>
    public ConstantMassDefinition? ConstantMass { get; } = constantMass;

    /// <summary>What to do next time where the empty vessel was not weighed, or null.</summary>
    public string? EmptyAdvice { get; } = emptyAdvice;

    /// <summary>How an empirical formula is sought, or null where none is.</summary>
    public FormulaSearch? Formula { get; } = formula;

    /// <summary>Reactions between which the key quantity decides; empty where there is only one.</summary>
    public IReadOnlyList<Alternative> Alternatives { get; } = alternatives;

    /// <summary>When a group is as expected; null takes the usual rule.</summary>
    public AsExpectedDefinition? AsExpected { get; } = asExpected;

    /// <summary>What one more heating is worth; null where nothing is decided.</summary>
    public DecisionDefinition? Decision { get; } = decision;

    /// <summary>Why the key quantity has no accepted value, as a sentence; null where the ideal run gives it.</summary>
    public string? NoAccepted { get; } = noAccepted;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
