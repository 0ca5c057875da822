namespace Calx.Measurement.Weighing;

/// <summary>How fast a hot vessel loses its temperature excess: d(excess)/dt = −excess/τ, where τ may vary.</summary>
public abstract record CoolingLaw
{
    private CoolingLaw()
    {
    }

    /// <summary>The momentary time constant τ, in seconds.</summary>
    /// <param name="excessInKelvins">Temperature above the room's, in K, above 0.</param>
    /// <param name="roomInCelsius">Temperature of the room, in °C.</param>
    public abstract double TimeConstantInSeconds(double excessInKelvins, double roomInCelsius);

    /// <summary>Newton's law with one time constant, as found by timing a vessel in the last part of its cooling.</summary>
    public sealed record Fixed : CoolingLaw
    {
        private readonly double seconds;

        /// <summary>Takes the time constant.</summary>
        /// <param name="timeConstantInSeconds">τ in seconds, above 0.</param>
        /// <exception cref="ArgumentOutOfRangeException">τ is not above 0, or not finite.</exception>
        public Fixed(double timeConstantInSeconds) => seconds = Positive(timeConstantInSeconds, nameof(timeConstantInSeconds));

        /// <inheritdoc/>
        public override double TimeConstantInSeconds(double excessInKelvins, double roomInCelsius) => seconds;
    }

    /// <summary>
    /// A porcelain vessel standing in still air, at one temperature throughout: m c dT/dt = −A [h (T − Tr) + ε σ (T⁴ − Tr⁴)],
    /// with free convection h = 1.42 (ΔT/L)^¼ W/(m² K).
    /// </summary>
    /// <remarks>
    /// The convection law is the simplified textbook one for air. Emissivity 0.9; heat capacity of porcelain 790 J/(kg K)
    /// at 25 °C rising in a straight line to 1060 at 800 °C (from memory). What stands in the vessel, its inner surface
    /// and conduction to the support are left out: ± 30 %, a judgement.
    /// </remarks>
    public sealed record StillAir : CoolingLaw
    {
        private const double StefanBoltzmann = 5.670374419e-8;
        private const double Emissivity = 0.9;
        private const double UsualLengthInMetres = 0.030;

        private readonly double kilograms;
        private readonly double squareMetres;

        /// <summary>Describes the vessel.</summary>
        /// <param name="massInGrams">Mass of vessel and lid, in grams.</param>
        /// <param name="areaInSquareCentimetres">Outer surface of vessel and lid, in cm².</param>
        /// <param name="blockedFraction">Part of the surface that touches a mat and loses nothing, 0 to below 1.</param>
        /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
        public StillAir(double massInGrams, double areaInSquareCentimetres, double blockedFraction = 0)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(blockedFraction);
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(blockedFraction, 1);
            kilograms = Positive(massInGrams, nameof(massInGrams)) / 1000;
            squareMetres = Positive(areaInSquareCentimetres, nameof(areaInSquareCentimetres)) / 1e4 * (1 - blockedFraction);
        }

        /// <summary>
        /// A crucible with its lid when only their mass is known: 55 cm² at 30 g, and the surfaces of like shapes go as
        /// the mass to the power ⅔ (a judgement).
        /// </summary>
        /// <param name="massInGrams">Mass of crucible and lid, in grams, above 0.</param>
        /// <param name="blockedFraction">0 on a triangle; about 0.25 on a mat.</param>
        /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
        public static StillAir LiddedCrucible(double massInGrams, double blockedFraction = 0) =>
            new(massInGrams, 55 * Math.Pow(Positive(massInGrams, nameof(massInGrams)) / 30, 2.0 / 3), blockedFraction);

        /// <summary>Heat lost per area and kelvin of excess by convection and radiation together, in W/(m² K).</summary>
        /// <param name="excessInKelvins">Temperature above the room's, in K, above 0.</param>
        /// <param name="roomInCelsius">Temperature of the room, in °C.</param>
        public static double HeatTransferCoefficient(double excessInKelvins, double roomInCelsius)
        {
            double room = roomInCelsius + 273.15;
            double body = room + excessInKelvins;
            double convection = 1.42 * Math.Pow(excessInKelvins / UsualLengthInMetres, 0.25);
            // (T⁴ − Tr⁴)/(T − Tr) = (T² + Tr²)(T + Tr): no division of two small differences.
            return convection + (Emissivity * StefanBoltzmann * ((body * body) + (room * room)) * (body + room));
        }

        /// <inheritdoc/>
        public override double TimeConstantInSeconds(double excessInKelvins, double roomInCelsius)
        {
            double heatCapacity = 790 + (270.0 / 775 * (roomInCelsius + excessInKelvins - 25));
            return kilograms * heatCapacity / (squareMetres * HeatTransferCoefficient(excessInKelvins, roomInCelsius));
        }
    }

    private static double Positive(double value, string name) => value > 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "A number above 0 is expected.");
}
