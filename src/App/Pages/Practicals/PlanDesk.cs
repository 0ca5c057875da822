using Calx.App.Input;
using Calx.App.Live;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.App.Pages.Practicals;

/// <summary>
/// Works plans out for the pages, one at a time, and keeps the last ones: going back to a plan costs nothing. Work that nobody waits
/// for any longer is given up.
/// </summary>
public sealed class PlanDesk : IDisposable
{
    /// <summary>Plans kept; one takes about a megabyte with its lessons.</summary>
    private const int Most = 30;

    private readonly SemaphoreSlim turn = new(1);
    private readonly Lock gate = new();
    private readonly LinkedList<(Key Key, Plan Plan)> kept = new();

    /// <summary>The plan of a form without faults.</summary>
    /// <param name="form">The form.</param>
    /// <param name="withWays">Whether ways out are looked for, which takes longer.</param>
    /// <param name="cancellation">Gives the work up.</param>
    public async Task<Plan> Of(PlanForm form, bool withWays, CancellationToken cancellation)
    {
        PlanChoice choice = form.Choice ?? throw new ArgumentException("The form has faults.", nameof(form));
        var key = new Key(form.Practical, PlanSnapshot.Text(form.Words), withWays);
        if (Find(key) is Plan known)
        {
            return known;
        }

        await turn.WaitAsync(cancellation);
        try
        {
            return Find(key) ?? await Task.Run(() => Work(choice, key, cancellation), cancellation);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private Plan Work(PlanChoice choice, Key key, CancellationToken cancellation)
    {
        Plan plan = Plan.Of(
            choice.Settings, AtomicWeights.Iupac2024, new PlanOptions(wanted: choice.Wanted, looksForWays: key.WithWays, cancellation: cancellation));
        lock (gate)
        {
            kept.AddFirst((key, plan));
            if (kept.Count > Most)
            {
                kept.RemoveLast();
            }
        }

        return plan;
    }

    private Plan? Find(Key key)
    {
        lock (gate)
        {
            for (LinkedListNode<(Key Key, Plan Plan)>? node = kept.First; node is not null; node = node.Next)
            {
                if (node.Value.Key == key)
                {
                    kept.Remove(node);
                    kept.AddFirst(node);
                    return node.Value.Plan;
                }
            }

            return null;
        }
    }

    private sealed record Key(Practical Practical, string Words, bool WithWays);
}
