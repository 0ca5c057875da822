namespace Calx.Practicals.Checking;

/// <summary>How much a finding weighs.</summary>
public enum CheckKind
{
    /// <summary>The file cannot be used before this is put right.</summary>
    Fault,

    /// <summary>The file can be used, but something that it says cannot come out.</summary>
    DoesNotHold,

    /// <summary>Somebody must look at it before a class does it, as at a hazard that is not known.</summary>
    LookUp,
}
