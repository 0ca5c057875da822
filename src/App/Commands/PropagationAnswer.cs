using Calx.App.Output;
using Calx.Measurement.Uncertainty;

namespace Calx.App.Commands;

/// <summary>A model propagated in every way the program knows, each result with the reason where there is none.</summary>
internal sealed class PropagationAnswer
{
    public PropagationAnswer(MeasurementModel model, MonteCarloSettings settings)
    {
        Model = model;
        Settings = settings;
        (FirstOrder, FirstOrderReason) = Try(() => Measurement.Uncertainty.FirstOrder.Propagate(model));
        (object? second, SecondOrderReason) = Try<object>(() => SecondOrder.StandardUncertainty(model));
        SecondOrderUncertainty = (double?)second;
        (Drawn, DrawnReason) = MonteCarlo.Run(model, settings) switch
        {
            MonteCarloOutcome.Finished finished => (finished.Result, null),
            MonteCarloOutcome.NotStable open => (open.Result, null),
            MonteCarloOutcome.DrawsFailed failed => ((MonteCarloResult?)null, failed.Reason),
            MonteCarloOutcome.CannotDraw cannot => (null, cannot.Reason),
            _ => throw new InvalidOperationException("No other outcome of a Monte Carlo run exists."),
        };
        if (FirstOrder is not null && Drawn is not null)
        {
            Validation = Measurement.Uncertainty.Validation.Compare(FirstOrder, Drawn, DigitsShown(FirstOrder.StandardUncertainty));
        }
    }

    public MeasurementModel Model { get; }

    public MonteCarloSettings Settings { get; }

    public UncertainValue? FirstOrder { get; }

    public string? FirstOrderReason { get; }

    public double? SecondOrderUncertainty { get; }

    public string? SecondOrderReason { get; }

    public MonteCarloResult? Drawn { get; }

    public string? DrawnReason { get; }

    public ValidationOutcome? Validation { get; }

    /// <summary>The judgement on first order in words, with what was compared: not the values but the ends of the intervals.</summary>
    public string ValidationInWords => Validation switch
    {
        ValidationOutcome.Validated agreed => $"{Compared(agreed)} First order agrees with the draws: its interval may be used.",
        ValidationOutcome.NotValidated apart => $"{Compared(apart)} First order does not agree with the draws: use the interval of the draws.",
        _ => "One of the two results is missing, so they cannot be compared.",
    };

    private string Compared(ValidationOutcome outcome)
    {
        string ends = $"The ends of first order's interval lie {Figure.Significant(outcome.LowDifference, 2)} and {Figure.Significant(outcome.HighDifference, 2)} from those of the shortest interval of the draws";
        string uncertainty = Figure.Significant(Drawn!.StandardUncertainty, DigitsShown(FirstOrder!.StandardUncertainty));
        return $"{ends}; {Figure.Significant(outcome.Tolerance, 2)} is allowed, half a unit in the last digit of the uncertainty {uncertainty} (JCGM 101:2008, clause 8).";
    }

    /// <summary>Significant digits of the uncertainty to which first order has to agree (JCGM 101:2008, 8.1): two where the
    /// uncertainty begins with 1 or 2, else one, which keeps the tolerance between 2 % and 17 % of it.</summary>
    private static int DigitsShown(double standardUncertainty)
    {
        double magnitude = Math.Pow(10, Math.Floor(Math.Log10(standardUncertainty)));
        return standardUncertainty > 0 && standardUncertainty / magnitude < 2.95 ? 2 : 1;
    }

    private static (T? Value, string? Reason) Try<T>(Func<T> compute)
        where T : class
    {
        try
        {
            return (compute(), null);
        }
        catch (UndefinedResultException fault)
        {
            return (null, fault.Message);
        }
    }
}
