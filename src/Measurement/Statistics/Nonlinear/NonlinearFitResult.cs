namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>Whether the parameters of a curve could be found.</summary>
public abstract record NonlinearFitResult
{
    private NonlinearFitResult()
    {
    }

    /// <summary>A least of the sum of squares was found. Another, lower one may exist elsewhere: no method excludes it.</summary>
    public sealed record Converged : NonlinearFitResult
    {
        internal Converged(NonlinearFit fit) => Fit = fit;

        /// <summary>The parameters and how well they are known.</summary>
        public NonlinearFit Fit { get; }
    }

    /// <summary>The readings do not tell some parameters apart: moving them together changes nothing that was read.</summary>
    public sealed record NotIdentified : NonlinearFitResult
    {
        internal NotIdentified(IReadOnlyList<string> parameters) => Parameters = parameters;

        /// <summary>The parameters that can move together, or the one that changes nothing.</summary>
        public IReadOnlyList<string> Parameters { get; }

        /// <summary>The same in a plain clause.</summary>
        public string Reason => Parameters.Count == 1
            ? $"the readings say nothing about {Parameters[0]}"
            : $"the readings do not tell {string.Join(", ", Parameters.SkipLast(1))} and {Parameters[^1]} apart";
    }

    /// <summary>There are no more readings than parameters, so nothing is left to judge the fit by.</summary>
    public sealed record TooFewPoints : NonlinearFitResult
    {
        internal TooFewPoints(int points, int needed) => (Points, Needed) = (points, needed);

        /// <summary>How many readings there are.</summary>
        public int Points { get; }

        /// <summary>How many are needed at least.</summary>
        public int Needed { get; }

        /// <summary>The same in a plain clause.</summary>
        public string Reason => $"{Points} readings cannot judge {Needed - 1} parameters: at least {Needed} are needed";
    }

    /// <summary>No least was found from this start.</summary>
    public sealed record DidNotConverge : NonlinearFitResult
    {
        internal DidNotConverge(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
