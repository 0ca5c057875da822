using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Faults;

/// <summary>What a middling group without faults reads: every parameter at its median, every part of typical mass, one round.</summary>
internal sealed class MiddleGroup
{
    private readonly Dictionary<string, double> last = new(StringComparer.Ordinal);

    /// <summary>Walks through the procedure once.</summary>
    public MiddleGroup(Practical practical, BenchProgram program, ReadOnlySpan<double> medians)
    {
        IReadOnlyList<Weighing> readings = program.Weighings(rounds: 1);
        double[] values = new double[readings.Count];
        program.Walk(medians, rounds: 1, program.NewState(), values);
        for (int i = 0; i < values.Length; i++)
        {
            ReadingDefinition reading = practical.Reading(readings[i].Reading);
            last[reading.Id] = values[i] + practical.Parts.Where(p => reading.Pan.Parts.Contains(p.Id)).Sum(p => p.Mass.Typical);
        }
    }

    /// <summary>The last value of a reading.</summary>
    public double Last(string readingId) => last[readingId];
}
