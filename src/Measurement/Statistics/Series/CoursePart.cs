namespace Calx.Measurement.Statistics.Series;

/// <summary>Start and loss for one course of the curve, all assumptions about the noise averaged over.</summary>
internal sealed record CoursePart
{
    private CoursePart()
    {
    }

    public double Start { get; private init; }

    public double Loss { get; private init; }

    public double StartVariance { get; private init; }

    public double LossVariance { get; private init; }

    public double Covariance { get; private init; }

    public double WhiteVariance { get; private init; }

    public double SharedVariance { get; private init; }

    public double WalkPerTime { get; private init; }

    /// <summary>The mean of ln(time of correlation), weighted by the shared variance's nodes.</summary>
    public double LogSharedTime { get; private init; }

    /// <summary>Logarithm of the likelihood with the prior of the loss.</summary>
    public double LogHeight { get; private init; }

    /// <summary>Averages: means, and the variance within and between the assumptions.</summary>
    /// <param name="parts">A part for each assumption.</param>
    /// <param name="logSharedTimes">ln of each assumption's time of correlation.</param>
    public static CoursePart Of(ReadOnlySpan<LinearPart> parts, ReadOnlySpan<double> logSharedTimes)
    {
        var logs = new double[parts.Length];
        for (int i = 0; i < logs.Length; i++)
        {
            logs[i] = parts[i].LogHeight;
        }

        double total = LogSum.Of(logs);
        double start = 0, loss = 0, white = 0, shared = 0, walk = 0, time = 0;
        for (int i = 0; i < logs.Length; i++)
        {
            double weight = logs[i] = Math.Exp(logs[i] - total);
            start += weight * parts[i].Start;
            loss += weight * parts[i].Loss;
            white += weight * parts[i].WhiteVariance;
            shared += weight * parts[i].SharedVariance;
            walk += weight * parts[i].WalkPerTime;
            time += weight * logSharedTimes[i];
        }

        double startVariance = 0, lossVariance = 0, covariance = 0;
        for (int i = 0; i < logs.Length; i++)
        {
            double a = parts[i].Start - start;
            double b = parts[i].Loss - loss;
            startVariance += logs[i] * (parts[i].StartVariance + (a * a));
            lossVariance += logs[i] * (parts[i].LossVariance + (b * b));
            covariance += logs[i] * (parts[i].Covariance + (a * b));
        }

        // The prior of the loss, 1 over its size, at the place where the readings put it.
        double size = Math.Max(Math.Abs(loss), Math.Sqrt(lossVariance));
        return new CoursePart
        {
            Start = start,
            Loss = loss,
            StartVariance = startVariance,
            LossVariance = lossVariance,
            Covariance = covariance,
            WhiteVariance = white,
            SharedVariance = shared,
            WalkPerTime = walk,
            LogSharedTime = time,
            LogHeight = total - Math.Log(size),
        };
    }
}
