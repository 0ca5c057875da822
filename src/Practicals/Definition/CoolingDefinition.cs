namespace Calx.Practicals.Definition;

/// <summary>How warm what is weighed still is, so many minutes after the flame was put out.</summary>
public sealed class CoolingDefinition(
    string reading, IReadOnlyList<CoolingPoint> points, double relativeSpread, Provenance provenance, FilePosition at)
{
    /// <summary>Id of the reading.</summary>
    public string Reading { get; } = reading;

    /// <summary>At least two, minutes rising, warmth falling.</summary>
    public IReadOnlyList<CoolingPoint> Points { get; } = points;

    /// <summary>Standard deviation of the natural logarithm of the warmth, above 0.</summary>
    public double RelativeSpread { get; } = relativeSpread;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;

    /// <summary>Excess over the room in K after so many minutes: straight lines of its logarithm between the points and
    /// beyond them.</summary>
    public double ExcessInKelvinAfter(double minutes)
    {
        int next = 1;
        while (next < Points.Count - 1 && Points[next].Minutes < minutes)
        {
            next++;
        }

        (CoolingPoint a, CoolingPoint b) = (Points[next - 1], Points[next]);
        double along = (minutes - a.Minutes) / (b.Minutes - a.Minutes);
        return Math.Exp(Math.Log(a.ExcessInKelvin) + (along * Math.Log(b.ExcessInKelvin / a.ExcessInKelvin)));
    }
}
