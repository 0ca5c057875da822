namespace Calx.Practicals.Definition;

/// <summary>For whom a piece of kit is.</summary>
public enum KitPer
{
    /// <summary>Each group has its own.</summary>
    Group,

    /// <summary>Each student has one.</summary>
    Student,

    /// <summary>The class shares it.</summary>
    Class,
}
