using System.Reflection;

namespace Calx.Papers.Reports;

/// <summary>A file of style that the program carries inside.</summary>
internal static class StyleFile
{
    /// <summary>Its text.</summary>
    /// <exception cref="InvalidOperationException">The program was built without it.</exception>
    public static string Text(string name)
    {
        using var reader = new StreamReader(Open(name));
        return reader.ReadToEnd();
    }

    /// <summary>Its bytes, to be disposed of by the caller.</summary>
    /// <exception cref="InvalidOperationException">The program was built without it.</exception>
    public static Stream Open(string name) => Assembly.GetExecutingAssembly().GetManifestResourceStream(name)
        ?? throw new InvalidOperationException($"The file {name} is not in the program.");
}
