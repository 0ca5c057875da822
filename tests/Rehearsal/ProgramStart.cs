using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Calx.Rehearsal;

/// <summary>How the program is started.</summary>
/// <param name="DataFolder">Where its records are.</param>
public sealed record ProgramStart(string DataFolder)
{
    /// <summary>The built program: the one beside this assembly, unless another is named.</summary>
    public string Program { get; init; } = Path.Combine(AppContext.BaseDirectory, "Calx.App.dll");

    /// <summary>The port; 0 takes any that is free.</summary>
    public int Port { get; init; }

    /// <summary>Further words of the command line.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>Words put before the program's own, such as another program that starts it.</summary>
    public IReadOnlyList<string> Before { get; init; } = [];

    /// <summary>Further variables of its environment.</summary>
    public IReadOnlyDictionary<string, string> Environment { get; init; } = new Dictionary<string, string>();

    /// <summary>What the operating system is told.</summary>
    internal ProcessStartInfo Information()
    {
        string[] program = Program.EndsWith(".dll", StringComparison.Ordinal) ? ["dotnet", Program] : [Program];
        string[] words =
        [
            .. Before, .. program, "serve", "--data", DataFolder, "--port", Port.ToString(CultureInfo.InvariantCulture), "--no-browser", .. Words,
        ];
        var information = new ProcessStartInfo(words[0], words[1..])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
        };
        foreach ((string name, string value) in Environment)
        {
            information.Environment[name] = value;
        }

        return information;
    }
}
