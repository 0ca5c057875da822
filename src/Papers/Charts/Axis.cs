using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Papers.Charts;

/// <summary>A straight axis: values to places on paper, with ticks at round numbers.</summary>
internal sealed class Axis
{
    /// <summary>At most so many steps over the values themselves; rounding the ends adds up to two.</summary>
    private const int UsualSteps = 5;

    private readonly double from;
    private readonly double to;

    /// <summary>Lays out an axis whose ends are round and hold all values.</summary>
    /// <param name="values">What has to fit; at least one finite number.</param>
    /// <param name="from">Place on paper of the lower end.</param>
    /// <param name="to">Place on paper of the upper end; smaller than <paramref name="from"/> for an axis that goes up.</param>
    /// <param name="steps">At most about so many steps between ticks.</param>
    public Axis(IEnumerable<double> values, double from, double to, int steps = UsualSteps)
    {
        this.from = from;
        this.to = to;
        double least = values.Min();
        double most = values.Max();
        double span = most > least ? most - least : Math.Max(Math.Abs(most), 1e-3);
        Step = RoundStep(span / steps);
        // A billionth forgives binary fractions: 0.3 is a tick of 0.1.
        Low = Math.Floor((least / Step) + 1e-9) * Step;
        High = Math.Max(Math.Ceiling((most / Step) - 1e-9) * Step, Low + Step);
        Decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(Step) - 1e-9), 0, Figures.MostDecimals);
    }

    /// <summary>Lower end.</summary>
    public double Low { get; }

    /// <summary>Upper end.</summary>
    public double High { get; }

    /// <summary>From tick to tick: 1, 2 or 5 times a power of ten.</summary>
    public double Step { get; }

    /// <summary>Decimals of the ticks.</summary>
    public int Decimals { get; }

    /// <summary>The ticks, from the lower end to the upper.</summary>
    public IEnumerable<double> Ticks
    {
        get
        {
            int count = (int)Math.Round((High - Low) / Step);
            return Enumerable.Range(0, count + 1).Select(i => Low + (i * Step));
        }
    }

    /// <summary>Where a value lies on paper.</summary>
    public double At(double value) => from + ((value - Low) / (High - Low) * (to - from));

    /// <summary>A tick's text.</summary>
    public string TextOf(double tick) => Figures.Text(tick, Decimals);

    private static double RoundStep(double rough)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double lead = rough / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    /// <summary>For a debugger.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low} to {High} by {Step}");
}
