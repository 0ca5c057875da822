namespace Calx.Practicals.Definition;

/// <summary>Whether a wrong earlier answer, rightly used, still earns the marks of a later one.</summary>
public enum CarryPolicy
{
    /// <summary>It does.</summary>
    Allowed,

    /// <summary>It does not: the step would be trivial, or the chemistry wrong.</summary>
    Never,
}
