namespace Calx.Practicals.Model.Simulation;

/// <summary>A cause that was to count in a group moved the result by too little each time it was drawn, or not by itself: on
/// this balance it cannot be shown.</summary>
public sealed class CauseTooSmallException : Exception
{
    /// <summary>Names the cause.</summary>
    /// <param name="cause">Its id.</param>
    /// <param name="attempts">How often a group was drawn.</param>
    public CauseTooSmallException(string cause, int attempts)
        : base(FormattableString.Invariant($"'{cause}' alone moved no result by enough to count, in {attempts} groups drawn"))
    {
        Cause = cause;
        Attempts = attempts;
    }

    /// <summary>Id of the cause.</summary>
    public string Cause { get; }

    /// <summary>How often a group was drawn.</summary>
    public int Attempts { get; }
}
