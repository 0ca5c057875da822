using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.App.Input;

/// <summary>The one line that a fault of the input is told in: <c>file:line:column: what is wrong</c>.</summary>
internal static class Fault
{
    /// <summary>A fault of a text given on the command line: <paramref name="source"/> says which word it was.</summary>
    public static string Line(string source, TextFault fault) => Line(source, 1, fault.Span.Start + 1, fault.ToString());

    /// <summary>A fault at a place of a file.</summary>
    public static string Line(string source, int line, int column, string reason) =>
        string.Create(CultureInfo.InvariantCulture, $"{source}:{line}:{column}: {reason}");
}
