using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Program;

/// <summary>The steps of a procedure in order, repeats and all.</summary>
internal sealed class ProgramSteps
{
    private readonly BenchDimensions dimensions;
    private readonly int parameters;
    private readonly List<Part> parts;

    /// <summary>Makes a practical's events ready.</summary>
    public ProgramSteps(Practical practical, AtomicWeights weights, BenchDimensions dimensions)
    {
        this.dimensions = dimensions;
        parameters = practical.Parameters.Count;
        var events = new EventSteps(practical, weights);
        parts = [.. practical.Procedure.Select(step => Of(step, events))];
    }

    /// <summary>Names each reading in order.</summary>
    public void List(int rounds, int beyond, Action<string> taken)
    {
        foreach (Part part in parts)
        {
            for (int round = 0; round < RoundsOf(part, rounds, beyond); round++)
            {
                foreach (string reading in part.Readings)
                {
                    taken(reading);
                }
            }
        }
    }

    /// <summary>Does every step in order.</summary>
    public void Walk(ReadOnlySpan<double> values, int rounds, int beyond, BenchState state, Span<double> readings)
    {
        Put(values, 0, state);
        foreach (Part part in parts)
        {
            int times = RoundsOf(part, rounds, beyond);
            for (int round = 0; round < times; round++)
            {
                if (round > 0)
                {
                    Put(values, round, state);
                }

                foreach (BenchStep step in part.Steps)
                {
                    step(state, readings);
                }
            }
        }
    }

    private static int RoundsOf(Part part, int rounds, int beyond) =>
        part.Most == 0 ? 1 : Math.Min(rounds, part.Most + beyond);

    private void Put(ReadOnlySpan<double> values, int round, BenchState state)
    {
        for (int p = 0; p < parameters; p++)
        {
            state.Slots[p] = values[dimensions.IndexOf(p, round)];
        }
    }

    private static Part Of(ProcedureEvent step, EventSteps events)
    {
        IReadOnlyList<ProcedureEvent> inner = step is RepeatEvent repeat ? repeat.Do : [step];
        return new Part(
            (step as RepeatEvent)?.Most ?? 0,
            [.. inner.Select(events.Of)],
            [.. inner.OfType<ReadEvent>().Select(r => r.Reading)]);
    }

    /// <param name="Most">Most rounds; 0 for a step that is done once.</param>
    /// <param name="Steps">What is done, in order.</param>
    /// <param name="Readings">Ids of what is read, in order.</param>
    private sealed record Part(int Most, BenchStep[] Steps, string[] Readings);
}
