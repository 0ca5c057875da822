namespace Calx.Practicals.Inference.Posterior;

/// <summary>What stands between the bench and the numbers written down: a closed set.</summary>
internal abstract record Disturbance
{
    private Disturbance(int fault) => Fault = fault;

    /// <summary>The practical's fault behind it.</summary>
    public int Fault { get; }

    /// <summary>A number was written that the balance did not show.</summary>
    /// <param name="Fault">The fault.</param>
    /// <param name="Row">The row.</param>
    /// <param name="ShownInGrams">What the balance showed.</param>
    /// <param name="Digits">The same as it stood on the display.</param>
    /// <param name="LogShare">Natural logarithm of the prior share of this slip among all slips of the group.</param>
    public sealed record Slip(int Fault, int Row, double ShownInGrams, string Digits, double LogShare) : Disturbance(Fault);

    /// <summary>One or two numbers that no usual slip explains; what the balance showed is not known.</summary>
    /// <param name="Fault">The fault.</param>
    /// <param name="Row">A row.</param>
    /// <param name="Other">Another row, or the same.</param>
    public sealed record Unreadable(int Fault, int Row, int Other) : Disturbance(Fault);

    /// <summary>It is at work, but nothing has been written down yet that it could have touched.</summary>
    /// <param name="Fault">The fault.</param>
    public sealed record Untold(int Fault) : Disturbance(Fault);

    /// <summary>A part was not on the pan.</summary>
    /// <param name="Fault">The fault.</param>
    /// <param name="Rows">At these rows.</param>
    /// <param name="MassInGrams">Mass of the part as the readings tell it.</param>
    public sealed record PartOff(int Fault, IReadOnlyList<int> Rows, double MassInGrams) : Disturbance(Fault);
}
