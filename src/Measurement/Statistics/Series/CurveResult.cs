namespace Calx.Measurement.Statistics.Series;

/// <summary>Whether a curve of a given order could be found in a series.</summary>
public abstract record CurveResult
{
    private CurveResult()
    {
    }

    /// <summary>It could.</summary>
    public sealed record Fitted : CurveResult
    {
        internal Fitted(FittedCurve curve) => Curve = curve;

        /// <summary>The curve.</summary>
        public FittedCurve Curve { get; }
    }

    /// <summary>The readings do not determine it.</summary>
    public sealed record NotDetermined : CurveResult
    {
        internal NotDetermined(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }

    /// <summary>There are too few readings to judge a curve by.</summary>
    public sealed record TooFewReadings : CurveResult
    {
        internal TooFewReadings(int readings, int needed) => (Readings, Needed) = (readings, needed);

        /// <summary>How many there are, those left out not counted.</summary>
        public int Readings { get; }

        /// <summary>How many are needed at least.</summary>
        public int Needed { get; }

        /// <summary>The same in a plain clause.</summary>
        public string Reason => $"{Readings} readings are too few for this curve: at least {Needed} are needed";
    }
}
