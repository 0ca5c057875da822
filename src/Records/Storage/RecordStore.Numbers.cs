using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>What teachers decided on numbers that past lessons taught.</summary>
public sealed partial class RecordStore
{
    /// <summary>Adds decisions of one moment, all or none. None is ever changed: to take an accepted number back is another decision. One
    /// that would change nothing is passed over. A clock that was put back does not turn their order round.</summary>
    /// <param name="decisions">The decisions, of one practical.</param>
    /// <param name="by">Who enters them.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> Decide(IReadOnlyList<NumberDecision> decisions, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(decisions);
        return Change(
            by,
            "numbers-decided",
            $"practical {(decisions.Count > 0 ? decisions[0].PracticalId : "")}",
            async (session, audit) =>
            {
                var told = new List<string>();
                foreach (NumberDecision decision in decisions)
                {
                    (string Name, object? Value)[] key = RecordRows.Of(decision);
                    NumberDecision? last = (await session.Query(
                        $"SELECT {RecordRows.Decision} FROM number_decision WHERE school = @school AND practical_id = @practical_id AND practical_version = @practical_version AND class_name = @class_name AND number_id = @number_id",
                        RecordRows.DecisionOf, cancel, key)).MaxBy(d => d.At);
                    if (decision.Became == (last?.Became ?? ""))
                    {
                        continue;
                    }

                    (string Name, object? Value)[] values = RecordRows.Of(last?.At >= decision.At ? decision.DecidedAt(last.At.AddTicks(1)) : decision);
                    await session.Execute(RecordRows.Insert("number_decision", values), cancel, values);
                    told.Add($"{decision.Number}{(decision.ClassName.Length > 0 ? $" of {decision.ClassName}" : "")}: {(decision.IsTakenBack ? "taken back" : decision.Became)}");
                }

                if (told.Count == 0)
                {
                    return session.Unchanged();
                }

                session.Tell(null, RecordChange.Numbers);
                return audit.Said(string.Join("; ", told));
            },
            cancel);
    }

    /// <summary>All decisions on a practical's numbers, of all its versions, the latest first.</summary>
    /// <param name="practicalId">The practical.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<NumberDecision>> Decisions(string practicalId, CancellationToken cancel = default) =>
    [
        .. (await Read(
            $"SELECT {RecordRows.Decision} FROM number_decision WHERE school = @school AND practical_id = @practical", RecordRows.DecisionOf, cancel, ("practical", practicalId)))
            .OrderByDescending(d => d.At).ThenBy(d => d.ClassName, StringComparer.Ordinal).ThenBy(d => d.Number, StringComparer.Ordinal),
    ];
}
