using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>A fault that adds to what some weighings show and leaves the bench as it is: warmth, another zero, soot.</summary>
internal abstract class ShiftFault(string? reading, IReadOnlySet<string> weighed)
{
    /// <summary>How many numbers between 0 and 1 it takes.</summary>
    public abstract int Dimensions { get; }

    /// <summary>The fault behind an effect, or null for an effect of another kind.</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="weighed">Ids of the readings that are taken on a balance: no other shows a mass too much.</param>
    public static ShiftFault? Find(FaultEffect effect, IReadOnlySet<string> weighed) => effect switch
    {
        FaultEffect.Warm warm => new Warmth(warm, weighed),
        FaultEffect.Zero zero => new OtherZero(zero, weighed),
        FaultEffect.Gain gain => new Foreign(gain, weighed),
        _ => null,
    };

    /// <summary>Adds its share, in g, to the weighings that it befalls: one of its reading's, equally likely, and for what
    /// stays all later ones too.</summary>
    /// <param name="even">Numbers between 0 and 1.</param>
    /// <param name="quantile">How a law turns one into a number of the bench.</param>
    /// <param name="weighings">The weighings of the walk.</param>
    /// <param name="among">It begins at one of the first so many of them.</param>
    /// <param name="shift">Of each weighing; added to.</param>
    public void AddTo(
        ReadOnlySpan<double> even,
        Func<ParameterLaw, double, double> quantile,
        IReadOnlyList<Weighing> weighings,
        int among,
        Span<double> shift)
    {
        int first = Chosen(even[0], weighings, among);
        if (first >= 0)
        {
            Add(even[1..], quantile, weighings, first, shift);
        }
    }

    /// <summary>Adds to the weighings from the first one befallen.</summary>
    protected abstract void Add(
        ReadOnlySpan<double> even,
        Func<ParameterLaw, double, double> quantile,
        IReadOnlyList<Weighing> weighings,
        int first,
        Span<double> shift);

    /// <summary>Whether a weighing is one of the reading that the fault befalls.</summary>
    protected bool Befalls(Weighing weighing) => reading is null ? IsWeighed(weighing) : weighing.Reading == reading;

    /// <summary>Whether a balance takes it.</summary>
    protected bool IsWeighed(Weighing weighing) => weighed.Contains(weighing.Reading);

    /// <summary>Any of the weighings of its reading, or of all readings, equally likely; -1 where there is none.</summary>
    private int Chosen(double even, IReadOnlyList<Weighing> weighings, int among)
    {
        int count = 0;
        for (int i = 0; i < among; i++)
        {
            count += Befalls(weighings[i]) ? 1 : 0;
        }

        int wanted = (int)(even * count);
        for (int i = 0; i < among; i++)
        {
            if (Befalls(weighings[i]) && wanted-- == 0)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>What is warmer than the room reads low: at one weighing, or, as likely, at every later one of the same
    /// reading too, where the group is as hasty again. Each has its own warmth.</summary>
    private sealed class Warmth(FaultEffect.Warm effect, IReadOnlySet<string> weighed) : ShiftFault(effect.Reading, weighed)
    {
        private const int MostWeighings = 3;

        public override int Dimensions => 3 + MostWeighings;

        protected override void Add(
            ReadOnlySpan<double> even,
            Func<ParameterLaw, double, double> quantile,
            IReadOnlyList<Weighing> weighings,
            int first,
            Span<double> shift)
        {
            double gramsPerKelvin = quantile(effect.MilligramsPerKelvin, even[0]) / 1000;
            bool again = even[1] < 0.5;
            int next = 0;
            for (int i = first; i < weighings.Count && next < MostWeighings && (again || next == 0); i++)
            {
                if (Befalls(weighings[i]))
                {
                    shift[i] -= gramsPerKelvin * quantile(effect.ExcessInKelvin, even[2 + next++]);
                }
            }
        }
    }

    /// <summary>One weighing on another balance, or the balance set to zero anew and used so from then on: equally
    /// likely.</summary>
    private sealed class OtherZero(FaultEffect.Zero effect, IReadOnlySet<string> weighed) : ShiftFault(effect.Reading, weighed)
    {
        public override int Dimensions => 3;

        protected override void Add(
            ReadOnlySpan<double> even,
            Func<ParameterLaw, double, double> quantile,
            IReadOnlyList<Weighing> weighings,
            int first,
            Span<double> shift)
        {
            double grams = quantile(effect.ShiftInGrams, even[0]);
            int last = even[1] < 0.5 ? weighings.Count - 1 : first;
            for (int i = first; i <= last; i++)
            {
                shift[i] += IsWeighed(weighings[i]) ? grams : 0;
            }
        }
    }

    /// <summary>Soot or grit stays where it stuck.</summary>
    private sealed class Foreign(FaultEffect.Gain effect, IReadOnlySet<string> weighed) : ShiftFault(effect.Reading, weighed)
    {
        public override int Dimensions => 2;

        protected override void Add(
            ReadOnlySpan<double> even,
            Func<ParameterLaw, double, double> quantile,
            IReadOnlyList<Weighing> weighings,
            int first,
            Span<double> shift)
        {
            double grams = quantile(effect.Mass, even[0]);
            for (int i = first; i < weighings.Count; i++)
            {
                shift[i] += IsWeighed(weighings[i]) ? grams : 0;
            }
        }
    }
}
