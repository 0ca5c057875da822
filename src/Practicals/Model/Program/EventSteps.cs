using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Program;

/// <summary>
/// What each kind of event does to the bench. A share outside 0 to 1 (the tail of a law) is taken as 0 or 1: more than all
/// of a thing cannot react, leave or escape.
/// </summary>
internal sealed class EventSteps
{
    private readonly Practical practical;
    private readonly Dictionary<string, int> slots = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> places;
    private readonly Dictionary<string, int> materials;
    private readonly Dictionary<string, Stoichiometry> reactions;

    /// <summary>Looks up what the events of a practical name.</summary>
    public EventSteps(Practical practical, AtomicWeights weights)
    {
        this.practical = practical;
        foreach (string id in practical.Parameters.Select(p => p.Id).Concat(practical.Gauges.Select(g => g.Id)))
        {
            slots[id] = slots.Count;
        }

        places = practical.Places.Select((p, i) => (p.Id, i)).ToDictionary(StringComparer.Ordinal);
        materials = practical.Materials.Select((m, i) => (m.Id, i)).ToDictionary(StringComparer.Ordinal);
        reactions = practical.Reactions.ToDictionary(
            r => r.Id, r => new Stoichiometry(r, practical.Materials, materials, weights), StringComparer.Ordinal);
    }

    /// <summary>An event made ready.</summary>
    public BenchStep Of(ProcedureEvent step) => step switch
    {
        WetEvent wet => Gained(wet.In, Water, Compile(wet.Water)),
        GainEvent gain => Gained(gain.In, Foreign, Compile(gain.Mass)),
        AddEvent add => Added(add),
        MoveEvent move => Moved(move.From, places[move.To], move.Materials, move.Share),
        LoseEvent lose => Moved(lose.In, null, lose.Materials, lose.Share),
        DryEvent dry => Dried(dry),
        ReactEvent react => Reacted(react),
        SetEvent set => Set(set),
        ReadEvent read => Taken(practical.Reading(read.Reading)),
        _ => throw new ArgumentException($"{step.GetType().Name} is no event of a practical.", nameof(step)),
    };

    private int Water => materials.Count;

    private int Foreign => materials.Count + 1;

    private CompiledFormula Compile(Expression formula) => Formulas.Compile(formula, slots);

    /// <summary>Within 0 to 1; what is no number stays none.</summary>
    private static double Share(double value) => value < 0 ? 0 : value > 1 ? 1 : value;

    private BenchStep Gained(string place, int what, CompiledFormula mass)
    {
        int p = places[place];
        return (state, _) => state.Contents[state.At(p, what)] += mass(state.Slots);
    }

    private BenchStep Added(AddEvent add)
    {
        int place = places[add.To];
        int main = materials[add.Material];
        CompiledFormula mass = Compile(add.Mass);
        (int Material, CompiledFormula Share)[] with = [.. add.With.Select(w => (materials[w.Material], Compile(w.Share)))];
        return (state, _) =>
        {
            double all = mass(state.Slots);
            double rest = all;
            foreach ((int material, CompiledFormula share) in with)
            {
                double part = all * Share(share(state.Slots));
                state.Contents[state.At(place, material)] += part;
                rest -= part;
            }

            state.Contents[state.At(place, main)] += rest;
        };
    }

    private BenchStep Moved(string from, int? to, IReadOnlyList<string> chosen, Expression share)
    {
        int source = places[from];
        // Without a choice everything goes, the water too.
        int[] what = chosen.Count == 0 ? [.. Enumerable.Range(0, materials.Count + 1)] : [.. chosen.Select(id => materials[id])];
        CompiledFormula part = Compile(share);
        return (state, _) =>
        {
            double moved = Share(part(state.Slots));
            foreach (int material in what)
            {
                double mass = moved * state.Contents[state.At(source, material)];
                state.Contents[state.At(source, material)] -= mass;
                if (to is int target)
                {
                    state.Contents[state.At(target, material)] += mass;
                }
            }
        };
    }

    private BenchStep Dried(DryEvent dry)
    {
        int place = places[dry.In];
        CompiledFormula share = Compile(dry.Share);
        return (state, _) => state.Contents[state.At(place, Water)] *= 1 - Share(share(state.Slots));
    }

    private BenchStep Reacted(ReactEvent react)
    {
        int place = places[react.In];
        Stoichiometry reaction = reactions[react.Reaction];
        CompiledFormula amount = Compile(react.Progress.Amount);
        CompiledFormula escapes = react.Escapes is null ? _ => 0 : Compile(react.Escapes);
        CompiledFormula cap = react.Cap is null ? _ => 0 : Compile(react.Cap);
        bool inMoles = react.Progress is ReactionProgress.Extent;
        return (state, _) =>
        {
            Span<double> held = state.Contents.AsSpan(state.At(place, 0), materials.Count);
            double much = amount(state.Slots);
            double fraction = inMoles ? reaction.FractionOf(held, much) : Share(much);
            reaction.Proceed(held, fraction, Share(escapes(state.Slots)), cap(state.Slots));
        };
    }

    private BenchStep Set(SetEvent set)
    {
        int gauge = slots[set.Gauge];
        CompiledFormula to = Compile(set.To);
        return (state, _) => state.Slots[gauge] = to(state.Slots);
    }

    private BenchStep Taken(ReadingDefinition reading)
    {
        if (reading.Gauge is string gauge)
        {
            int shown = slots[gauge];
            return (state, readings) => readings[state.Weighed++] = state.Slots[shown];
        }

        int[] onPan = [.. reading.Pan.Places.Select(p => places[p])];
        CompiledFormula minus = reading.Pan.Minus is null ? _ => 0 : Compile(reading.Pan.Minus);
        return (state, readings) =>
        {
            double mass = -minus(state.Slots);
            foreach (int place in onPan)
            {
                mass += state.Total(place);
            }

            readings[state.Weighed++] = mass;
        };
    }
}
