using System.Text.Json;

namespace Calx.Bench.Beside;

/// <summary>What a peer printed about one run.</summary>
/// <param name="Line">The JSON object.</param>
internal sealed record PeerRun(JsonElement Line)
{
    /// <summary>Clock time of the computing, without the interpreter's start.</summary>
    public double Seconds => Line.GetProperty("seconds").GetDouble();

    /// <summary>How many draws, fits or formulas that took.</summary>
    public double Size => Line.GetProperty("n").GetDouble();

    /// <summary>Whether its answers agreed with the script's own checks; true where it has none.</summary>
    public bool Ok => !Line.TryGetProperty("ok", out JsonElement ok) || ok.GetBoolean();

    /// <summary>One of its answers.</summary>
    public double Number(string name) => Line.GetProperty(name).GetDouble();
}
