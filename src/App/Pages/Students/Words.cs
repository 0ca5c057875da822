namespace Calx.App.Pages.Students;

/// <summary>Words of a practical's file as they stand on a button or as a heading.</summary>
public static class Words
{
    /// <summary>With a capital at the beginning.</summary>
    public static string Capital(string label) => label.Length == 0 ? label : char.ToUpperInvariant(label[0]) + label[1..];
}
