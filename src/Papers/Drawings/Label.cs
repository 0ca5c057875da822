namespace Calx.Papers.Drawings;

/// <summary>A label in its place beside a drawing, with its ruled line.</summary>
/// <param name="Target">Index of the part that it names.</param>
/// <param name="Left">Whether it stands to the left of the drawing, its text ending at its line.</param>
/// <param name="From">Where its line begins, at the middle of the text's height.</param>
/// <param name="End">Where its line ends, on the part.</param>
internal readonly record struct Label(int Target, bool Left, Spot From, Spot End)
{
    /// <summary>The ruled line.</summary>
    public (Spot From, Spot To) Leader => (From, End);
}
