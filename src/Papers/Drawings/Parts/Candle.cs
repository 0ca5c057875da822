namespace Calx.Papers.Drawings.Parts;

/// <summary>A tea light, 38 mm wide and 15 mm high: cup, wax, wick, and its flame where it is lit. Common practice, no source.</summary>
internal static class Candle
{
    private const double Half = 19;
    private const double Height = 15;
    private const double Wax = 12;

    public static PartShape Shape(bool lit)
    {
        Stroke half = new Pen(Half - 1, 0).To(Half, Height).Open();
        Stroke cup = half with { Points = [.. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y)), .. half.Points] };
        Stroke flame = new Pen(0, Wax + 4).Curve(new(7, Wax + 8), new(5, Wax + 18), new(0, Wax + 30)).AndMirrored().Closed(Stroke.Fine);
        return new PartShape(
            [
                cup, new Pen(-Half + 0.2, Wax).To(Half - 0.2, Wax).Open(Stroke.Fine), new Pen(0, Wax).To(0, Wax + 6).Open(Stroke.Fine),
                .. lit ? [flame] : Array.Empty<Stroke>(),
            ],
            PartShape.BothSides(new(Half - 0.6, 6), new(Half - 0.4, 9), new(Half - 4, Wax)));
    }
}
