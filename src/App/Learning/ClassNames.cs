namespace Calx.App.Learning;

/// <summary>Classes by the name that they have year after year: 9f is 9F, and 9F of next year is taken for the same class.</summary>
public static class ClassNames
{
    /// <summary>By what a name is known again.</summary>
    public static string Key(string name) => name.Trim().ToUpperInvariant();

    /// <summary>Whether two names mean the same class.</summary>
    public static bool Same(string one, string other) => Key(one) == Key(other);
}
