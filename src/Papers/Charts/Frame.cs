namespace Calx.Papers.Charts;

/// <summary>The plot area of a chart with its axes, ticks and names.</summary>
internal sealed class Frame
{
    private readonly SvgPicture picture;

    public Frame(SvgPicture picture, double left, double top, double right, double bottom)
    {
        this.picture = picture;
        Left = left;
        Top = top;
        Right = right;
        Bottom = bottom;
    }

    public double Left { get; }

    public double Top { get; }

    public double Right { get; }

    public double Bottom { get; }

    /// <summary>Grid lines, ticks and name of the axis along the bottom.</summary>
    public void Across(Axis axis, string name)
    {
        foreach (double tick in axis.Ticks)
        {
            double x = axis.At(tick);
            picture.Line(x, Top, x, Bottom, "grid");
            picture.Text(x, Bottom + 20, axis.TextOf(tick), "tick", "middle");
        }

        picture.Line(Left, Bottom, Right, Bottom, "axis");
        // A long name under a narrow frame stays on the picture.
        double half = Math.Min((TextWidth.Of(name) / 2) + 2, picture.Width / 2);
        picture.Text(Math.Clamp((Left + Right) / 2, half, picture.Width - half), Bottom + 42, name, "axis-name", "middle");
    }

    /// <summary>Grid lines and ticks of the axis up the side; its name stands level above it, where it can be read.</summary>
    public void Upwards(Axis axis, string name)
    {
        foreach (double tick in axis.Ticks)
        {
            double y = axis.At(tick);
            picture.Line(Left, y, Right, y, "grid");
            picture.Text(Left - 8, y + 5, axis.TextOf(tick), "tick", "end");
        }

        picture.Line(Left, Top, Left, Bottom, "axis");
        picture.Text(Left - 48, Top - 14, name, "axis-name");
    }
}
