namespace Calx.Papers.Drawings;

/// <summary>The wall of a vessel that is the same on both sides of its middle: how far it is from there at each height.</summary>
internal sealed class Cavity
{
    private readonly Spot[] wall;

    /// <summary>Takes the right half of the wall, from the bottom up, each point higher than the last or level with it.</summary>
    public Cavity(IEnumerable<Spot> rightHalf) => wall = [.. rightHalf];

    /// <summary>Height of the bottom in mm.</summary>
    public double Bottom => wall[0].Y;

    /// <summary>Height of the mouth in mm.</summary>
    public double Top => wall[^1].Y;

    /// <summary>Half the width at a height in mm; nothing below the bottom.</summary>
    public double HalfAt(double height)
    {
        if (height < Bottom)
        {
            return 0;
        }

        for (int i = 1; i < wall.Length; i++)
        {
            if (height <= wall[i].Y && wall[i].Y > wall[i - 1].Y)
            {
                double share = Math.Max(0, (height - wall[i - 1].Y) / (wall[i].Y - wall[i - 1].Y));
                return wall[i - 1].X + (share * (wall[i].X - wall[i - 1].X));
            }
        }

        return wall[^1].X;
    }

    /// <summary>The height of contents that fill a share of the depth.</summary>
    public double Level(double share) => Bottom + (share * (Top - Bottom));

    /// <summary>The outline of what fills it up to a height, level with its wall.</summary>
    public IReadOnlyList<Spot> Filled(double height)
    {
        Spot[] right = [.. wall.Where(p => p.Y < height), new Spot(HalfAt(height), height)];
        return [.. right, .. right.Reverse().Select(p => new Spot(-p.X, p.Y))];
    }
}
