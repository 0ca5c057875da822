namespace Calx.Practicals.Planning.Amounts;

/// <summary>Which amounts of the sample can work.</summary>
public sealed class AmountAdvice
{
    /// <summary>A class is taken to reach a conclusion once it does so nine times in ten (judgement).</summary>
    public const double Sure = 0.9;

    /// <summary>And is led astray at most once in twenty (judgement).</summary>
    public const double Astray = 0.05;

    /// <summary>Amounts whose probabilities differ by less are as good as each other: what the counting cannot tell apart.</summary>
    private const double AsGood = 0.02;

    internal AmountAdvice(AmountPoint planned, IReadOnlyList<AmountPoint> curve, IReadOnlyList<AmountChange> changes, double largestInGrams)
    {
        Planned = planned;
        Curve = curve;
        Changes = changes;
        LargestInGrams = largestInGrams;
        Smallest = curve.FirstOrDefault(p => p.Chances.Count > 0 && p.ClassRight >= Sure && p.ClassWrong <= Astray);
        AmountPoint[] good = [.. curve.Where(p => p.Chances.Count > 0 && p.ClassRight >= curve.Max(q => q.ClassRight) - AsGood)];
        Best = good.FirstOrDefault(p => p.GroupRight >= good.Max(q => q.GroupRight) - AsGood);
    }

    /// <summary>With the plan's own amount.</summary>
    public AmountPoint Planned { get; }

    /// <summary>By the amount, rising, none above what a class may use or the vessel takes.</summary>
    public IReadOnlyList<AmountPoint> Curve { get; }

    /// <summary>What changes of the plan would do to its conclusions, time left aside.</summary>
    public IReadOnlyList<AmountChange> Changes { get; }

    /// <summary>No amount above this is looked at.</summary>
    public double LargestInGrams { get; }

    /// <summary>The smallest amount of the curve with which the class is sure enough of every conclusion; null where none is.</summary>
    public AmountPoint? Smallest { get; }

    /// <summary>The smallest amount as good as any: more of it stops helping. Null where nothing can be concluded.</summary>
    public AmountPoint? Best { get; }
}
