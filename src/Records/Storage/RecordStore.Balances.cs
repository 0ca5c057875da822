using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Balances and their checks.</summary>
public sealed partial class RecordStore
{
    private const string NoSuchBalance = "This balance is not kept here.";

    /// <summary>Adds a balance. Refused where another has its letter, or the id is taken.</summary>
    /// <param name="added">The balance.</param>
    /// <param name="by">Who adds it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> AddBalance(KeptBalance added, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(added);
        return Change(
            by,
            "balance-added",
            $"balance {added.Id}",
            async (session, audit) =>
            {
                if (await BalanceIn(session, added.Id, cancel) is not null)
                {
                    return session.Refuse("Another balance has this id already.");
                }

                if (await LetterTaken(session, added, cancel) is string reason)
                {
                    return session.Refuse(reason);
                }

                (string Name, object? Value)[] values = RecordRows.Of(added);
                await session.Execute(RecordRows.Insert("balance", values), cancel, values);
                session.Tell(null, RecordChange.Balances);
                return audit.Added(RecordJson.Of(added));
            },
            cancel);
    }

    /// <summary>Changes the balance of that id. Refused where there is none, or another has its letter.</summary>
    /// <param name="changed">As it is to be.</param>
    /// <param name="by">Who changes it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> ChangeBalance(KeptBalance changed, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(changed);
        return Change(
            by,
            "balance-changed",
            $"balance {changed.Id}",
            async (session, audit) =>
            {
                if (await BalanceIn(session, changed.Id, cancel) is not KeptBalance was)
                {
                    return session.Refuse(NoSuchBalance);
                }

                if (was == changed)
                {
                    return session.Unchanged();
                }

                if (await LetterTaken(session, changed, cancel) is string reason)
                {
                    return session.Refuse(reason);
                }

                (string Name, object? Value)[] values = RecordRows.Of(changed);
                await session.Execute(RecordRows.Update("balance", values), cancel, values);
                session.Tell(null, RecordChange.Balances);
                return audit.Changed(RecordJson.Of(was), RecordJson.Of(changed));
            },
            cancel);
    }

    /// <summary>All balances by letter.</summary>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<KeptBalance>> Balances(CancellationToken cancel = default) =>
        [.. (await Read($"SELECT {RecordRows.Balance} FROM balance WHERE school = @school", RecordRows.BalanceOf, cancel)).OrderBy(b => b.Letter, StringComparer.Ordinal)];

    /// <summary>Adds a check of a balance. Refused where there is no such balance, or the id is taken.</summary>
    /// <param name="check">The check.</param>
    /// <param name="by">Who adds it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> AddCheck(BalanceCheck check, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(check);
        (string Name, object? Value)[] values = RecordRows.Of(check);
        return Change(
            by,
            "balance-checked",
            $"balance {check.BalanceId}",
            async (session, audit) =>
            {
                if (await BalanceIn(session, check.BalanceId, cancel) is null)
                {
                    return session.Refuse(NoSuchBalance);
                }

                if (await session.Any("SELECT 1 FROM balance_check WHERE school = @school AND id = @id", cancel, values))
                {
                    return session.Refuse("Another check has this id already.");
                }

                await session.Execute(RecordRows.Insert("balance_check", values), cancel, values);
                session.Tell(null, RecordChange.Balances);
                return audit.Added(RecordJson.Of(check));
            },
            cancel);
    }

    /// <summary>The checks of a balance, the latest first.</summary>
    /// <param name="balanceId">The balance.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<BalanceCheck>> Checks(RecordId balanceId, CancellationToken cancel = default) =>
    [
        .. (await Read(
            $"SELECT {RecordRows.Check} FROM balance_check WHERE school = @school AND balance_id = @balance", RecordRows.CheckOf, cancel, ("balance", balanceId.ToString())))
            .OrderByDescending(c => c.At).ThenBy(c => c.Id.ToString(), StringComparer.Ordinal),
    ];

    private static Task<KeptBalance?> BalanceIn(Session session, RecordId balanceId, CancellationToken cancel) => session.Find(
        $"SELECT {RecordRows.Balance} FROM balance WHERE school = @school AND id = @id", RecordRows.BalanceOf, cancel, ("id", balanceId.ToString()));

    private static async Task<string?> LetterTaken(Session session, KeptBalance one, CancellationToken cancel) =>
        await session.Any("SELECT 1 FROM balance WHERE school = @school AND letter = @letter AND id <> @id", cancel, RecordRows.Of(one))
            ? $"There is a balance {one.Letter} already: the letter printed on a balance tells it from all others of the school."
            : null;
}
