namespace Calx.Papers.Drawings.Parts;

/// <summary>A pipe-clay triangle in section: to either side a clay pipe on a twisted wire that lies on the tripod's ring.
/// Common practice, no source.</summary>
internal static class Triangle
{
    /// <summary>Height of the pipes' upper edges, which carry a vessel.</summary>
    public const double PipeTop = Middle + HalfPipe;

    private const double Middle = Strand;
    private const double HalfPipe = 4.5;
    private const double PipeEnd = 38;
    private const double WireEnd = 68;

    /// <summary>How far a strand of the wire swings to either side of its middle.</summary>
    private const double Strand = 1.5;

    /// <summary>Half a turn of the wire.</summary>
    private const double HalfTurn = 5;

    /// <summary>The triangle around something.</summary>
    /// <param name="halfInMillimetres">Half the width of what it holds, where the upper edges of the pipes touch it.</param>
    public static PartShape Around(double halfInMillimetres)
    {
        Stroke[] right = [Wire(up: 1), Wire(up: -1), Pen.Box(halfInMillimetres, Middle - HalfPipe, PipeEnd, PipeTop)];
        return new PartShape(
            [.. right, .. right.Select(stroke => stroke.Mirrored())],
            PartShape.BothSides(new(PipeEnd - 4, Middle), new(PipeEnd - 7, Middle + 2), new(PipeEnd - 7, Middle - 2), new(WireEnd - 0.5, Middle)));
    }

    /// <summary>One of the two strands, from the pipe to the end.</summary>
    private static Stroke Wire(int up)
    {
        const int Points = 48;
        return new Stroke(
            [
                .. Enumerable.Range(0, Points + 1).Select(i => PipeEnd + ((WireEnd - PipeEnd) * i / Points))
                    .Select(x => new Spot(x, Middle + (up * Strand * Math.Sin(Math.PI * (x - PipeEnd) / HalfTurn)))),
            ],
            Closed: false,
            Stroke.Fine);
    }
}
