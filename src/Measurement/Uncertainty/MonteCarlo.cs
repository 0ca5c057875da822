namespace Calx.Measurement.Uncertainty;

/// <summary>
/// Propagation of distributions by the Monte Carlo method (JCGM 101:2008, clause 7). Memory: 8 bytes a draw, and up to a
/// quarter of that again while the ends of the intervals are sorted.
/// </summary>
public static class MonteCarlo
{
    /// <summary>Draws a fixed number of times (7.1 to 7.7).</summary>
    /// <param name="model">The model.</param>
    /// <param name="settings">Draws, seed, threads, coverage.</param>
    /// <returns><see cref="MonteCarloOutcome.Finished"/>, <see cref="MonteCarloOutcome.DrawsFailed"/> or
    /// <see cref="MonteCarloOutcome.CannotDraw"/>.</returns>
    /// <exception cref="OperationCanceledException">The calculation was stopped.</exception>
    public static MonteCarloOutcome Run(MeasurementModel model, MonteCarloSettings settings)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(settings);
        (MonteCarloSampler? sampler, string? fault) = MonteCarloSampler.Create(model, settings.Seed);
        if (sampler is null)
        {
            return new MonteCarloOutcome.CannotDraw(fault!);
        }

        double[] values = GC.AllocateUninitializedArray<double>(settings.Draws);
        var blocks = new MonteCarloBlocks(sampler, [values]);
        return blocks.Evaluate(settings.Parallelism)
            ? new MonteCarloOutcome.Finished(MonteCarloIntervals.Summarise(values, blocks.Moments(), settings))
            : blocks.CountFailures();
    }

    /// <summary>
    /// Draws until the result is stable (7.9): sequences of max(10 000, 100/(1 − p)) draws are added until estimate,
    /// standard uncertainty and both ends of the shortest interval are known to within the numerical tolerance.
    /// </summary>
    /// <param name="model">The model.</param>
    /// <param name="significantDigits">How many digits of the standard uncertainty are meaningful, 1 to 4; usually 1 or 2.
    /// </param>
    /// <param name="settings">Its draws are the most that may be made.</param>
    /// <returns>Any of the outcomes.</returns>
    /// <exception cref="OperationCanceledException">The calculation was stopped.</exception>
    public static MonteCarloOutcome RunAdaptive(MeasurementModel model, int significantDigits, MonteCarloSettings settings)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(settings);
        NumericalTolerance.CheckDigits(significantDigits);
        (MonteCarloSampler? sampler, string? fault) = MonteCarloSampler.Create(model, settings.Seed);
        return sampler is null
            ? new MonteCarloOutcome.CannotDraw(fault!)
            : new MonteCarloAdaptive(sampler, significantDigits, settings).Run();
    }
}
