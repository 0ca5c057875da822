namespace Calx.App.Commands;

/// <summary>A command line that can be typed as it stands, and what it is for.</summary>
internal readonly record struct Example(string Line, string Purpose);
