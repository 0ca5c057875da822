namespace Calx.Bench.Beside;

/// <summary>The files in bench/peers/data, which our computation and the peer's read alike.</summary>
internal static class PeerData
{
    /// <summary>Lines that are not empty and not comments.</summary>
    public static string[] Lines(string file) =>
        [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "peers", "data", file))
            .Where(line => line.Length > 0 && line[0] != '#')];

    /// <summary>The words of all lines in order.</summary>
    public static string[] Words(string file) =>
        [.. Lines(file).SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
}
