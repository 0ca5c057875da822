using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>A procedure with what is repeated in it, each event once.</summary>
internal static class FlatProcedure
{
    public static IEnumerable<ProcedureEvent> Of(IEnumerable<ProcedureEvent> events) =>
        events.SelectMany(e => e is RepeatEvent repeat ? [e, .. Of(repeat.Do)] : new[] { e });

    /// <summary>Ids of the readings that it takes.</summary>
    public static HashSet<string> Taken(Practical practical) => [.. Of(practical.Procedure).OfType<ReadEvent>().Select(r => r.Reading)];
}
