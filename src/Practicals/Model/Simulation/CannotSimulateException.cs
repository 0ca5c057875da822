namespace Calx.Practicals.Model.Simulation;

/// <summary>A class cannot be invented as it was asked for; the message says why, in a clause for people.</summary>
public sealed class CannotSimulateException : Exception
{
    private CannotSimulateException(string reason)
        : base(reason)
    {
    }

    /// <summary>A cause that was to count in a group moved the result by too little each time it was drawn, or not by itself: on
    /// this balance it cannot be shown.</summary>
    internal static CannotSimulateException CauseTooSmall(string cause, int attempts) =>
        new(FormattableString.Invariant($"'{cause}' alone moved no result by enough to count on this balance, in {attempts} groups drawn"));

    /// <summary>The sample's mass was given, and nothing that is put in is the sample.</summary>
    internal static CannotSimulateException NoSample(string practical) =>
        new($"nothing that is put in is the sample of '{practical}' by itself, so its mass cannot be set");

    /// <summary>Nobody of a class can be given data in which something, or nothing, went wrong.</summary>
    internal static CannotSimulateException NoPack(string practical, bool isOdd, int attempts) => new(FormattableString.Invariant(
        $"in {attempts} groups drawn of '{practical}' {(isOdd ? "nothing ever" : "something always")} went wrong by more than counts on this balance; ask for another share of odd cases"));

    /// <summary>A class cannot be given data that differ.</summary>
    internal static CannotSimulateException AllAlike(int students, int attempts) => new(FormattableString.Invariant(
        $"{students} students cannot all have readings of their own on this balance, in {attempts} draws for each; it is too coarse for this practical"));

    /// <summary>An amount is never above 0.</summary>
    internal static CannotSimulateException NoAmount(string parameter) =>
        new($"the law of '{parameter}' never gives an amount above 0");
}
