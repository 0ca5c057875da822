namespace Calx.Practicals.Learning;

/// <summary>What became of the pieces of a kit in a lesson.</summary>
public sealed class KitSeen
{
    /// <summary>Takes a count.</summary>
    /// <param name="piece">Id of the kit in the practical.</param>
    /// <param name="used">Pieces that were used, from 0.</param>
    /// <param name="broken">Pieces of them that broke, from 0 to <paramref name="used"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public KitSeen(string piece, int used, int broken)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(piece);
        ArgumentOutOfRangeException.ThrowIfNegative(used);
        ArgumentOutOfRangeException.ThrowIfNegative(broken);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(broken, used);
        (Piece, Used, Broken) = (piece, used, broken);
    }

    /// <summary>Id of the kit.</summary>
    public string Piece { get; }

    /// <summary>Pieces that were used.</summary>
    public int Used { get; }

    /// <summary>Pieces that broke.</summary>
    public int Broken { get; }
}
