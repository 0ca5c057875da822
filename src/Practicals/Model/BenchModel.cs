using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Model;

/// <summary>
/// The practical's generative model without its noise: given the numbers in which groups differ, the true mass of what
/// is on the pan at every weighing. Every use of a practical goes through it; nothing describes the practical a second
/// time. Masses are sums of products of the parameters, so they are smooth in them.
/// </summary>
public sealed class BenchModel
{
    private readonly Practical practical;
    private readonly Dictionary<string, int> materials;
    private readonly Dictionary<string, Stoichiometry> reactions;

    /// <summary>Prepares a practical: molar masses and coefficients are looked up once.</summary>
    public BenchModel(Practical practical, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(weights);
        this.practical = practical;
        materials = practical.Materials.Select((m, i) => (m.Id, i)).ToDictionary(StringComparer.Ordinal);
        reactions = practical.Reactions.ToDictionary(
            r => r.Id, r => new Stoichiometry(r, practical.Materials, materials, weights), StringComparer.Ordinal);
    }

    /// <summary>The true masses of one group.</summary>
    /// <param name="parameters">The value of each parameter of the practical, by id.</param>
    /// <param name="rounds">Rounds of each repeated step, at least 1; no more than the practical allows are done.</param>
    public TrueMasses Run(Func<string, double> parameters, int rounds)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        ArgumentOutOfRangeException.ThrowIfLessThan(rounds, 1);
        var walk = new Walk(this, parameters, rounds);
        walk.Do(practical.Procedure);
        return walk.Masses;
    }

    /// <summary>A parameter's value where the reaction is complete and nothing goes wrong.</summary>
    public double Ideal(string parameterId)
    {
        Parameter parameter = practical.Parameters.First(p => p.Id == parameterId);
        return parameter.Ideal ?? LawMiddle.Of(parameter.Law);
    }

    /// <summary>One walk through the procedure.</summary>
    private sealed class Walk(BenchModel model, Func<string, double> parameters, int rounds)
    {
        private readonly Dictionary<string, Contents> places = model.practical.Places
            .ToDictionary(p => p.Id, _ => new Contents(model.materials.Count), StringComparer.Ordinal);

        private readonly Dictionary<string, double> masses = new(StringComparer.Ordinal);
        private readonly Dictionary<string, string> lastOf = new(StringComparer.Ordinal);
        private readonly Dictionary<string, double> gauges = new(StringComparer.Ordinal);
        private readonly Dictionary<string, int> taken = new(StringComparer.Ordinal);

        public TrueMasses Masses => new(masses, lastOf);

        public void Do(IReadOnlyList<ProcedureEvent> events)
        {
            foreach (ProcedureEvent step in events)
            {
                Do(step);
            }
        }

        private void Do(ProcedureEvent step)
        {
            switch (step)
            {
                case WetEvent wet: places[wet.In].Water += Value(wet.Water); break;
                case AddEvent add: Add(add); break;
                case MoveEvent move: Move(places[move.From], places[move.To], move.Materials, Value(move.Share)); break;
                case LoseEvent lose: Move(places[lose.In], null, lose.Materials, Value(lose.Share)); break;
                case DryEvent dry: places[dry.In].Water *= 1 - Value(dry.Share); break;
                case GainEvent gain: places[gain.In].Foreign += Value(gain.Mass); break;
                case ReactEvent react: React(react); break;
                case ReadEvent read: Read(model.practical.Reading(read.Reading)); break;
                case RepeatEvent repeat:
                    for (int round = 0; round < Math.Min(rounds, repeat.Most); round++)
                    {
                        Do(repeat.Do);
                    }

                    break;
                case SetEvent set: gauges[set.Gauge] = Value(set.To); break;
                default: throw new ArgumentException($"{step.GetType().Name} is no event of a practical.", nameof(step));
            }
        }

        private void Add(AddEvent add)
        {
            Contents place = places[add.To];
            double mass = Value(add.Mass);
            double rest = mass;
            foreach (AddedShare with in add.With)
            {
                double share = mass * Value(with.Share);
                place[model.materials[with.Material]] += share;
                rest -= share;
            }

            place[model.materials[add.Material]] += rest;
        }

        private void Move(Contents from, Contents? to, IReadOnlyList<string> chosen, double share)
        {
            IEnumerable<int> moved = chosen.Count == 0 ? model.materials.Values : chosen.Select(id => model.materials[id]);
            foreach (int material in moved)
            {
                double mass = share * from[material];
                from[material] -= mass;
                if (to is not null)
                {
                    to[material] += mass;
                }
            }

            if (chosen.Count == 0)
            {
                double water = share * from.Water;
                from.Water -= water;
                if (to is not null)
                {
                    to.Water += water;
                }
            }
        }

        private void React(ReactEvent react)
        {
            double escapes = react.Escapes is null ? 0 : Value(react.Escapes);
            double cap = react.Cap is null ? 0 : Value(react.Cap);
            Stoichiometry reaction = model.reactions[react.Reaction];
            Contents place = places[react.In];
            double amount = Value(react.Progress.Amount);
            double fraction = react.Progress is ReactionProgress.Extent ? reaction.FractionOf(place, amount) : amount;
            reaction.Proceed(place, fraction, escapes, cap);
        }

        private void Read(ReadingDefinition reading)
        {
            if (reading.Gauge is not null)
            {
                return; // What a clock or thermometer shows is no mass.
            }

            int occurrence = taken[reading.Id] = taken.GetValueOrDefault(reading.Id) + 1;
            string id = TakenReading.IdOf(reading.Id, occurrence);
            double parts = reading.Pan.Parts.Sum(part => model.practical.Parts.First(p => p.Id == part).Mass.Typical);
            double minus = reading.Pan.Minus is null ? 0 : Value(reading.Pan.Minus);
            masses[id] = parts + reading.Pan.Places.Sum(place => places[place].Total) - minus;
            lastOf[reading.Id] = id;
        }

        private double Value(Expression expression) =>
            expression.Evaluate(
                name => gauges.TryGetValue(name, out double shown) ? shown : parameters(name),
                _ => throw new ArgumentException("No molar mass stands in an event."));
    }
}
