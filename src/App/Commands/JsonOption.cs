using System.CommandLine;

namespace Calx.App.Commands;

/// <summary>The option that all commands that compute share.</summary>
internal static class JsonOption
{
    public static Option<bool> Create() => new("--json") { Description = "print one JSON document instead of text" };
}
