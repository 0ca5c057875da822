namespace Calx.Practicals.Clock;

/// <summary>The minutes of one group in one lesson that the last calls are reckoned from.</summary>
internal struct GroupMinutes
{
    /// <summary>When its last trial began.</summary>
    public double TrialBegan;

    /// <summary>When its first heating of that trial began.</summary>
    public double HeatBegan;

    /// <summary>When the flame of that heating was out.</summary>
    public double HeatEnded;

    /// <summary>When its last reheat began; 0 where it had none.</summary>
    public double ReheatBegan;

    /// <summary>When the flame of that reheat was out.</summary>
    public double ReheatEnded;

    /// <summary>When it was ready for what the class does together at the end.</summary>
    public double Ready;

    /// <summary>When it took the first reading of the run; 0 where it took none.</summary>
    public double NextRead;

    /// <summary>When it took the last reading of the run; 0 where it took none.</summary>
    public double LastRead;
}
