using Calx.Practicals.Definition;

namespace Calx.Practicals.Findings;

/// <summary>What the groups show that did the practical in one way.</summary>
public sealed class ArmFindings
{
    internal ArmFindings(Arm? arm, string label, IReadOnlyList<GroupFindings> groups, ClassResult result)
    {
        Arm = arm;
        Label = label;
        Groups = groups;
        Result = result;
    }

    /// <summary>The practical's arm, or null for the ordinary way.</summary>
    public Arm? Arm { get; }

    /// <summary>What it is called.</summary>
    public string Label { get; }

    /// <summary>Its groups, in the order of the table.</summary>
    public IReadOnlyList<GroupFindings> Groups { get; }

    /// <summary>What they find, pooled among themselves and held against what this way should give.</summary>
    public ClassResult Result { get; }
}
