namespace Calx.Papers.Drawings;

/// <summary>How wide a drawing is, in units of its picture, and how large the apparatus in it.</summary>
/// <param name="Width">Its width.</param>
/// <param name="WidestWidth">A row of apparatus takes up to so much before it is drawn smaller.</param>
/// <param name="WidestLabel">A label that is wider is broken into lines.</param>
/// <param name="Tallest">The apparatus is no higher.</param>
/// <param name="SmallestScale">Units for 1 mm of apparatus, at least.</param>
/// <param name="LeaderRoom">Room for ruled lines on either side.</param>
internal sealed record DrawingSize(double Width, double WidestWidth, double WidestLabel, double Tallest, double SmallestScale, double LeaderRoom)
{
    /// <summary>From margin to margin: 660 units are some 150 mm on paper, so that a label of 15 is printed at 9.7 points.</summary>
    public static DrawingSize Wide { get; } = new(660, 760, 150, 400, 0.7, 26);

    /// <summary>Beside a text: 360 units are some 68 mm, so that a label is printed at 8 points.</summary>
    public static DrawingSize Narrow { get; } = new(360, 360, 84, 300, 0.4, 12);
}
