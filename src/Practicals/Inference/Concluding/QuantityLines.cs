using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>
/// A quantity fast enough for a million groups: most are a sum of readings with fixed factors, or one such sum over another,
/// and are then nothing but those factors; any other formula is evaluated with its gradient. Molar masses are taken as
/// certain: beside a school balance they are.
/// </summary>
internal sealed class QuantityLines
{
    private readonly double[]? top;
    private readonly double[]? bottom;
    private readonly QuantityProgram? program;
    private readonly int[] namesAt;
    private readonly double[] molarMasses;
    private readonly GaugeSpread gauges;

    /// <summary>Prepares a quantity.</summary>
    /// <param name="practical">The practical; readings are told apart by their places in its list.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public QuantityLines(Practical practical, QuantityDefinition quantity, AtomicWeights weights)
    {
        Quantity = quantity;
        string[] readings = [.. practical.Readings.Select(r => r.Id)];
        gauges = new GaugeSpread(practical);
        namesAt = [.. quantity.Formula.Names.Select(n => Array.IndexOf(readings, n))];
        molarMasses = [.. quantity.Formula.MolarMasses.Select(MolarMass)];
        (Expression over, Expression? under) = quantity.Formula is BinaryOperation { Operator: Operator.Divide } division
            ? (division.Left, division.Right) : (quantity.Formula, null);
        if (IsSum(over) && (under is null || IsSum(under)))
        {
            top = Line(over);
            bottom = under is null ? null : Line(under);
        }
        else
        {
            program = new QuantityProgram(quantity.Formula);
        }

        double MolarMass(string formula) => Formula.Parse(formula).Value.MolarMass(weights).Value;

        // The last number is what the sum is where every reading is 0.
        double[] Line(Expression sum) =>
        [
            .. readings.Select(r => sum.Derivative(r).Evaluate(_ => 0, MolarMass)),
            sum.Evaluate(_ => 0, MolarMass),
        ];
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>Places of the readings that it rests on.</summary>
    public IReadOnlyList<int> Readings => namesAt;

    /// <summary>The value of one group.</summary>
    /// <param name="last">The last weighing of each reading, by its place in the practical's list, in g.</param>
    /// <param name="u">Standard uncertainty of one weighing, in g.</param>
    public MeasuredValue Of(ReadOnlySpan<double> last, double u)
    {
        if (program is not null)
        {
            return ByProgram(last, u);
        }

        double under = bottom is null ? 1 : Sum(bottom, last);
        double value = Sum(top!, last) / under;
        return new MeasuredValue(value, gauges.With(Spread(value) * u, Factors(value), last) / Math.Abs(under));
    }

    /// <summary>How many standard uncertainties a group's readings lie from giving a certain value. For one sum over another that
    /// is Fieller's question, exact however small the divisor; for any other formula it is that of first order.</summary>
    public double DistanceFrom(double value, ReadOnlySpan<double> last, double u)
    {
        if (program is not null)
        {
            MeasuredValue found = ByProgram(last, u);
            return (found.Value - value) / found.StandardUncertainty;
        }

        double residual = Sum(top!, last) - (value * (bottom is null ? 1 : Sum(bottom, last)));
        return residual / gauges.With(Spread(value) * u, Factors(value), last);
    }

    private static bool IsSum(Expression expression) => expression.Names.All(n => expression.Derivative(n).Names.Count == 0);

    private static double Sum(double[] line, ReadOnlySpan<double> last)
    {
        double sum = line[^1];
        for (int i = 0; i < last.Length; i++)
        {
            sum += line[i] * last[i];
        }

        return sum;
    }

    /// <summary>Root of the sum of squares of the factors of 'top less so many bottoms'.</summary>
    private double Spread(double value)
    {
        double squares = 0;
        for (int i = 0; i < top!.Length - 1; i++)
        {
            double factor = gauges.IsWeighed(i) ? top[i] - (bottom is null ? 0 : value * bottom[i]) : 0;
            squares += factor * factor;
        }

        return Math.Sqrt(squares);
    }

    private double[] Factors(double value) => gauges.IsEmpty ? [] : [.. top!.Take(top!.Length - 1).Select((t, i) => t - (bottom is null ? 0 : value * bottom[i]))];

    private MeasuredValue ByProgram(ReadOnlySpan<double> last, double u)
    {
        Span<double> variables = stackalloc double[program!.Width];
        Span<double> gradient = stackalloc double[program.Width];
        for (int i = 0; i < namesAt.Length; i++)
        {
            variables[i] = last[namesAt[i]];
        }

        molarMasses.CopyTo(variables[namesAt.Length..]);
        double value = program.Evaluate(variables, gradient);
        double squares = 0;
        double[] factors = gauges.IsEmpty ? [] : new double[last.Length];
        for (int i = 0; i < namesAt.Length; i++)
        {
            squares += gauges.IsWeighed(namesAt[i]) ? gradient[i] * gradient[i] : 0;
            if (factors.Length > 0)
            {
                factors[namesAt[i]] = gradient[i];
            }
        }

        return new MeasuredValue(value, gauges.With(Math.Sqrt(squares) * u, factors, last));
    }
}
