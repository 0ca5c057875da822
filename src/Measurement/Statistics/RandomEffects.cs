namespace Calx.Measurement.Statistics;

/// <summary>
/// Splits the spread of results into a part within groups (repeatability) and a part between them, and gives the mean
/// that goes with it. The model: group i has a true value drawn from a normal distribution about the general mean, and
/// each of its results scatters normally about that true value.
/// </summary>
public static class RandomEffects
{
    /// <summary>
    /// Pools values whose own standard uncertainties are known, such as one result of each group with its budget. The
    /// variance between, τ², is found by restricted maximum likelihood (Viechtbauer, J. Educ. Behav. Stat. 30 (2005)
    /// 261), the boundary at 0 included; values are then weighted with 1/(u² + τ²).
    /// </summary>
    /// <param name="values">One or more independent values of the same quantity, in one unit.</param>
    /// <param name="standardUncertainties">The standard uncertainty of each, above 0, independent of the others'.</param>
    /// <exception cref="ArgumentException">No values, unequal lengths, or a number that is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A standard uncertainty is not above 0.</exception>
    public static PooledResult FromKnownUncertainties(
        ReadOnlySpan<double> values,
        ReadOnlySpan<double> standardUncertainties)
    {
        Require.Finite(values, 1);
        Require.SameLength(standardUncertainties, values.Length);
        Require.Positive(standardUncertainties);
        return new KnownUncertainties(values, standardUncertainties).Pool();
    }

    /// <summary>
    /// The same where it is known beforehand about how much groups differ, as few groups cannot tell: τ is taken as half-normal
    /// (as C. Röver and others advise for few groups, Res. Synth. Methods 12 (2021) 448) and averaged over instead of estimated.
    /// The standard uncertainty and its degrees of freedom are those of the Student's t law with the variance and the kurtosis
    /// of what is then known of the mean. From <see cref="ManyGroups"/> groups on they tell τ themselves, and the restricted
    /// likelihood decides.
    /// </summary>
    /// <param name="values">One or more independent values of the same quantity, in one unit.</param>
    /// <param name="standardUncertainties">The standard uncertainty of each, above 0, independent of the others'.</param>
    /// <param name="expectedBetween">Scale of the half-normal law of τ, in the unit of the values, 0 or more; 0 where nothing is
    /// known. Where the groups differ by more, what they show takes its place.</param>
    /// <exception cref="ArgumentException">No values, unequal lengths, or a number that is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A standard uncertainty is not above 0, or the scale is below 0.</exception>
    public static PooledResult FromKnownUncertainties(
        ReadOnlySpan<double> values,
        ReadOnlySpan<double> standardUncertainties,
        double expectedBetween)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(expectedBetween);
        Require.Finite(values, 1);
        Require.SameLength(standardUncertainties, values.Length);
        Require.Positive(standardUncertainties);
        var known = new KnownUncertainties(values, standardUncertainties);
        return expectedBetween == 0 || values.Length >= ManyGroups ? known.Pool() : known.PoolExpecting(expectedBetween);
    }

    /// <summary>From so many groups on their own scatter tells how much they differ.</summary>
    public const int ManyGroups = 60;

    /// <summary>
    /// Repeatability, spread between groups and reproducibility by restricted maximum likelihood, for groups of any
    /// sizes (Searle, Casella and McCulloch, Variance Components (1992), 6.6). For groups of one size it equals
    /// <see cref="FromGroupsByAnova"/>, but where the between part is 0: then all results share one spread.
    /// </summary>
    /// <param name="groups">The results of each group, all in one unit; a group may hold one result, not none.</param>
    /// <exception cref="ArgumentException">No groups, an empty group, or a number that is not finite.</exception>
    public static GroupSpreadResult FromGroups(IReadOnlyList<IReadOnlyList<double>> groups) =>
        GroupTotals.Of(groups) switch
        {
            { Reason: { } reason } => new GroupSpreadResult.NotSeparable(reason),
            var totals => new GroupSpreadResult.Separated(new GroupReml(totals).Fit()),
        };

    /// <summary>
    /// The same by analysis of variance as ISO 5725-2:1994, 7.4, has it: general mean m weighted with group sizes,
    /// s_r from within groups, s_L² from the mean squares and set to 0 where negative (7.4.5.4), s_R² = s_r² + s_L².
    /// </summary>
    /// <inheritdoc cref="FromGroups"/>
    public static GroupSpreadResult FromGroupsByAnova(IReadOnlyList<IReadOnlyList<double>> groups) =>
        GroupTotals.Of(groups) switch
        {
            { Reason: { } reason } => new GroupSpreadResult.NotSeparable(reason),
            var totals => new GroupSpreadResult.Separated(GroupAnova.Fit(totals)),
        };
}
