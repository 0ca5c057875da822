namespace Calx.Measurement.Weighing;

/// <summary>
/// Air buoyancy. A balance compares forces, and air carries part of a load in proportion to the load's volume, so a
/// light material reads low against the dense weights that the balance was adjusted with.
/// </summary>
/// <remarks>
/// A balance adjusted with weights marked with their conventional mass (OIML D 28:2004: weights of 8000 kg/m³ in air
/// of 1.2 kg/m³ at 20 °C) shows the conventional mass of a load in such air.
/// </remarks>
public static class Buoyancy
{
    /// <summary>Density in kg/m³ of the weights that define conventional mass.</summary>
    public const double ConventionalWeightDensity = 8000;

    /// <summary>Density in kg/m³ of the air that defines conventional mass.</summary>
    public const double ConventionalAirDensity = 1.2;

    /// <summary>
    /// The mass of a load in grams from what the balance shows: m = w (1 − ρa/ρw)/(1 − ρa/ρ).
    /// </summary>
    /// <param name="shownInGrams">The reading w, in grams, zero taken in the same air.</param>
    /// <param name="density">Density ρ of the load, in kg/m³, above the air's.</param>
    /// <param name="airDensity">Density ρa of the air, in kg/m³, 0 or more.</param>
    /// <param name="weightDensity">Density ρw of the adjusting weights, in kg/m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density is out of range.</exception>
    public static double TrueMass(
        double shownInGrams,
        double density,
        double airDensity = ConventionalAirDensity,
        double weightDensity = ConventionalWeightDensity) =>
        shownInGrams * Lift(weightDensity, airDensity) / Lift(density, airDensity);

    /// <summary>The conventional mass in grams of a body: the reading that it gives in air of 1.2 kg/m³.</summary>
    /// <param name="trueMassInGrams">Its mass, in grams.</param>
    /// <param name="density">Its density, in kg/m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">The density is not above that of air.</exception>
    public static double ConventionalMass(double trueMassInGrams, double density) =>
        trueMassInGrams * Lift(density, ConventionalAirDensity) / Lift(ConventionalWeightDensity, ConventionalAirDensity);

    /// <summary>
    /// What is to be added to a reading, in grams, to get the mass: positive for loads lighter than the weights.
    /// </summary>
    /// <inheritdoc cref="TrueMass"/>
    public static double CorrectionInGrams(
        double shownInGrams,
        double density,
        double airDensity = ConventionalAirDensity,
        double weightDensity = ConventionalWeightDensity)
    {
        _ = Lift(weightDensity, airDensity);
        return shownInGrams * airDensity * ((1 / density) - (1 / weightDensity)) / Lift(density, airDensity);
    }

    /// <summary>
    /// How much lower the balance reads, in grams, when a flexible bag or balloon swells by a volume of air displaced.
    /// </summary>
    /// <param name="swellingInCubicCentimetres">Increase of the volume, in cm³.</param>
    /// <param name="airDensity">Density of the air, in kg/m³ (the same number in mg/cm³).</param>
    /// <param name="weightDensity">Density of the adjusting weights, in kg/m³.</param>
    /// <exception cref="ArgumentOutOfRangeException">A density is out of range.</exception>
    public static double LowReadingOfSwelling(
        double swellingInCubicCentimetres,
        double airDensity = ConventionalAirDensity,
        double weightDensity = ConventionalWeightDensity) =>
        swellingInCubicCentimetres * airDensity / 1000 / Lift(weightDensity, airDensity);

    private static double Lift(double density, double airDensity)
    {
        if (!(airDensity >= 0) || !(density > airDensity) || !double.IsFinite(density))
        {
            throw new ArgumentOutOfRangeException(
                nameof(density), density, "A load's density is above that of the air, which is 0 or more.");
        }

        return 1 - (airDensity / density);
    }
}
