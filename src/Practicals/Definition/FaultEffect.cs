namespace Calx.Practicals.Definition;

/// <summary>What a fault does.</summary>
public abstract record FaultEffect
{
    private FaultEffect()
    {
    }

    /// <summary>Parameters follow other laws.</summary>
    /// <param name="Settings">At least one.</param>
    public sealed record Set(IReadOnlyList<ParameterSetting> Settings) : FaultEffect;

    /// <summary>What is weighed is warmer than the room and so reads low.</summary>
    /// <param name="Reading">Id of the reading.</param>
    /// <param name="ExcessInKelvin">By how much it is warmer.</param>
    /// <param name="MilligramsPerKelvin">By how much too low it reads for each kelvin.</param>
    public sealed record Warm(string Reading, ParameterLaw ExcessInKelvin, ParameterLaw MilligramsPerKelvin) : FaultEffect;

    /// <summary>A part is missing from the pan at one of the readings that should have it.</summary>
    /// <param name="Part">Id of the part.</param>
    public sealed record Off(string Part) : FaultEffect;

    /// <summary>A reading is written down wrongly.</summary>
    /// <param name="Swapped">Share of the slips that swap two neighbouring digits.</param>
    /// <param name="WrongDigit">Share that put one digit wrong.</param>
    /// <param name="WholeGram">Share that are one or ten whole grams out.</param>
    /// <param name="DroppedZero">Share that leave zeros at the end unwritten. The four add up to 1.</param>
    public sealed record Pen(double Swapped, double WrongDigit, double WholeGram, double DroppedZero) : FaultEffect;

    /// <summary>Something that does not belong there is weighed too.</summary>
    /// <param name="Reading">Id of the reading.</param>
    /// <param name="Mass">Its mass in g.</param>
    public sealed record Gain(string Reading, ParameterLaw Mass) : FaultEffect;

    /// <summary>One reading was taken with another zero than the rest, or on another balance: a zero that all readings
    /// share cancels in their differences.</summary>
    /// <param name="Reading">Id of the reading; null for any of them.</param>
    /// <param name="ShiftInGrams">By how much it reads too high, either sign.</param>
    public sealed record Zero(string? Reading, ParameterLaw ShiftInGrams) : FaultEffect;
}
