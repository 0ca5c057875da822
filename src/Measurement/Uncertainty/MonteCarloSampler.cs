using Calx.Measurement.Distributions;
using Calx.Measurement.Expressions;

namespace Calx.Measurement.Uncertainty;

/// <summary>
/// Draws the inputs of a model and evaluates it, a block at a time. Each block has its own stream of random numbers, so
/// that a draw depends on the seed and its place alone and not on the thread that makes it.
/// </summary>
internal sealed class MonteCarloSampler
{
    /// <summary>Draws in a block: five columns of them stay in the processor's second cache.</summary>
    public const int BlockSize = 4096;

    private readonly MeasurementModel model;
    private readonly DrawProgram program;
    private readonly CorrelatedNormals? correlated;
    private readonly int[] correlatedColumns;
    private readonly ulong seed;

    private MonteCarloSampler(MeasurementModel model, ulong seed, int[] correlatedColumns)
    {
        this.model = model;
        this.seed = seed;
        this.correlatedColumns = correlatedColumns;
        program = DrawProgram.Compile(model.Model, [.. model.Inputs.Select(input => input.Name)], model.MolarMass);
        correlated = correlatedColumns.Length == 0 ? null : Correlated(model, correlatedColumns);
    }

    /// <summary>A sampler, or why there can be none.</summary>
    public static (MonteCarloSampler? Sampler, string? Fault) Create(MeasurementModel model, ulong seed)
    {
        double[,] correlation = model.CorrelationMatrix();
        int[] columns = [.. Enumerable.Range(0, model.Inputs.Count)
            .Where(row => Enumerable.Range(0, model.Inputs.Count).Any(column => column != row && correlation[row, column] != 0))];
        string? other = columns
            .Select(column => model.Inputs[column])
            .FirstOrDefault(input => input.Distribution is not NormalInput)?.Name;
        return other is null
            ? (new MonteCarloSampler(model, seed, columns), null)
            : (null, $"{other} has a correlation but is not normal, and a correlation alone does not say how draws of such an "
                + "input go with another's; draws can be made only for correlated normal inputs");
    }

    /// <summary>Room for one block of draws of every input.</summary>
    public double[][] NewColumns() => [.. model.Inputs.Select(_ => new double[BlockSize])];

    /// <summary>Draws a block and evaluates the model for it.</summary>
    /// <exception cref="UndefinedResultException">The model has no value for one of the draws.</exception>
    public void Evaluate(ulong block, double[][] columns, Span<double> values)
    {
        Draw(block, columns, values.Length);
        program.Evaluate(columns, values.Length, values);
    }

    /// <summary>The places in a block for which the model has no value, and why the first has none.</summary>
    public (IReadOnlyList<int> Places, string? Reason) Failures(ulong block, int length)
    {
        double[][] columns = NewColumns();
        Draw(block, columns, length);
        var places = new List<int>();
        string? reason = null;
        double[][] one = [.. columns.Select(_ => new double[1])];
        for (int place = 0; place < length; place++)
        {
            for (int i = 0; i < one.Length; i++)
            {
                one[i][0] = columns[i][place];
            }

            try
            {
                program.Evaluate(one, 1, new double[1]);
            }
            catch (UndefinedResultException fault)
            {
                reason ??= fault.Message;
                places.Add(place);
            }
        }

        return (places, reason);
    }

    private static CorrelatedNormals Correlated(MeasurementModel model, int[] columns)
    {
        double[,] all = model.CorrelationMatrix();
        var part = new double[columns.Length, columns.Length];
        for (int row = 0; row < columns.Length; row++)
        {
            for (int column = 0; column < columns.Length; column++)
            {
                part[row, column] = all[columns[row], columns[column]];
            }
        }

        return new CorrelatedNormals([.. columns.Select(column => (NormalInput)model.Inputs[column].Distribution)], part);
    }

    private void Draw(ulong block, double[][] columns, int count)
    {
        var stream = new RandomStream(seed, block);
        for (int i = 0; i < columns.Length; i++)
        {
            if (Array.IndexOf(correlatedColumns, i) < 0)
            {
                model.Inputs[i].Distribution.Fill(stream, columns[i].AsSpan(0, count));
            }
        }

        correlated?.Fill(stream, [.. correlatedColumns.Select(column => columns[column])], count);
    }
}
