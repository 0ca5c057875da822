namespace Calx.Measurement.Uncertainty;

/// <summary>Inputs with the matrix of their correlation coefficients; shared by every value that rests on them.</summary>
internal sealed class CorrelationGroup
{
    private readonly Dictionary<UncertainInput, int> positions;
    private readonly double[,] matrix;
    private readonly int[] leaders;

    /// <exception cref="ArgumentException">An input stands twice, or the matrix cannot be one of correlations.</exception>
    public CorrelationGroup(IReadOnlyList<UncertainInput> inputs, double[,] correlation)
    {
        positions = new Dictionary<UncertainInput, int>(inputs.Count);
        foreach (UncertainInput input in inputs)
        {
            if (!positions.TryAdd(input, positions.Count))
            {
                throw new ArgumentException($"The input {input.Name} stands twice among the correlated.", nameof(inputs));
            }
        }

        if (CorrelationMatrix.FaultOf(correlation, [.. inputs.Select(input => input.Name)]) is { } fault)
        {
            throw new ArgumentException(fault, nameof(correlation));
        }

        matrix = (double[,])correlation.Clone();
        Inputs = [.. inputs];
        leaders = FindLeaders();
    }

    /// <summary>In the order of the matrix.</summary>
    public UncertainInput[] Inputs { get; }

    public bool Holds(UncertainInput input) => positions.ContainsKey(input);

    /// <summary>Place of an input of the group in the matrix.</summary>
    public int PositionOf(UncertainInput input) => positions[input];

    public double Between(int first, int second) => matrix[first, second];

    /// <summary>The first input that this one is tied to by a chain of correlations other than 0; itself where it is
    /// the first, or tied to none.</summary>
    public UncertainInput LeaderOf(UncertainInput input) => Inputs[leaders[positions[input]]];

    private int[] FindLeaders()
    {
        int[] found = new int[Inputs.Length];
        Array.Fill(found, -1);
        var waiting = new Stack<int>();
        for (int leader = 0; leader < found.Length; leader++)
        {
            waiting.Push(leader);
            while (waiting.TryPop(out int tied))
            {
                if (found[tied] >= 0)
                {
                    continue;
                }

                found[tied] = leader;
                for (int next = 0; next < found.Length; next++)
                {
                    if (matrix[tied, next] != 0)
                    {
                        waiting.Push(next);
                    }
                }
            }
        }

        return found;
    }
}
