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

    /// <summary>The judgement on first order in words.</summary>
    public string ValidationInWords => Validation switch
    {
        ValidationOutcome.Validated => "First order agrees with the draws to the digits of the uncertainty that matter: its interval may be used.",
        ValidationOutcome.NotValidated => "First order does not agree with the draws to the digits of the uncertainty that matter: use the interval of the draws.",
        _ => "One of the two results is missing, so they cannot be compared.",
    };

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
