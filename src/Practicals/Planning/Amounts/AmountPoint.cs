namespace Calx.Practicals.Planning.Amounts;

/// <summary>What a plan comes to with one amount of the sample.</summary>
/// <param name="SampleInGrams">The usual mass of a sample.</param>
/// <param name="Chances">Each conclusion that the table allows, in the practical's order; those asked for alone.</param>
/// <param name="GroupSpread">How far groups scatter about the accepted value of the key quantity: half the width of the middle 68 of
/// 100, over the accepted value; null where the table does not give it.</param>
/// <param name="ClassSpread">The same of the class's pooled value.</param>
/// <param name="ClassBias">Median of the class's pooled value over the accepted one, less 1: what averaging does not remove.</param>
/// <param name="Classes">How many classes were drawn.</param>
public sealed record AmountPoint(
    double SampleInGrams,
    IReadOnlyList<ConclusionChance> Chances,
    double? GroupSpread,
    double? ClassSpread,
    double? ClassBias,
    int Classes)
{
    /// <summary>Probability that the class reaches the conclusion it reaches least probably; 0 where there is none to reach.</summary>
    public double ClassRight => Chances.Count == 0 ? 0 : Chances.Min(c => c.ClassRight.Value);

    /// <summary>The same of one group.</summary>
    public double GroupRight => Chances.Count == 0 ? 0 : Chances.Min(c => c.GroupRight.Value);

    /// <summary>Probability that the class is led astray on the conclusion on which it is most probably.</summary>
    public double ClassWrong => Chances.Count == 0 ? 0 : Chances.Max(c => c.ClassWrong.Value);
}
