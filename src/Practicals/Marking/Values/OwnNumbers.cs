using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking.Values;

/// <summary>What one student has at hand: readings, and the answers written so far.</summary>
internal sealed class OwnNumbers
{
    /// <summary>Values on the way that were not written down are taken as rounded to so many figures at the least. Common practice, no source.</summary>
    private const int UnseenFigures = 3;

    private readonly Dictionary<string, double> readings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> decimals = new(StringComparer.Ordinal);
    private readonly HashSet<string> gauges;
    private readonly Dictionary<string, AnswerText.Number> written = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ValueRange> followed = new(StringComparer.Ordinal);
    private readonly IReadOnlyDictionary<string, AskedValue> asked;
    private readonly IReadOnlyDictionary<string, CurveReadOff> readOff;

    public OwnNumbers(StudentWork work, IReadOnlyDictionary<string, AskedValue> asked, Practical practical)
    {
        this.asked = asked;
        gauges = [.. practical.Readings.Where(r => !r.IsWeighing).Select(r => r.Id)];
        readOff = work.ReadOff;
        Decimals = int.MaxValue;
        foreach ((string id, IReadOnlyList<WrittenNumber> taken) in work.Readings.Where(r => r.Value.Count > 0))
        {
            readings[id] = taken[^1].AsDouble;
            decimals[id] = taken.Max(t => t.Decimals);
            Decimals = practical.Readings.Any(r => r.Id == id && !r.IsWeighing) ? Decimals : Math.Min(Decimals, decimals[id]);
            if (taken.Count > 1)
            {
                readings[MarkingFacts.Earlier(id)] = taken[^2].AsDouble;
            }
        }
    }

    /// <summary>Decimals of the coarsest reading.</summary>
    public int Decimals { get; }

    /// <summary>Decimals of the readings that a sum or difference is made of: those of the balance, or of the instruments that were
    /// read for it.</summary>
    public int DecimalsOf(Expression formula)
    {
        int[] own = [.. formula.Names.Where(gauges.Contains).Select(name => decimals.GetValueOrDefault(name, int.MaxValue))];
        return own.Length == 0 ? Decimals : own.Min();
    }

    /// <summary>A reading, or not a number.</summary>
    public double Reading(string name) =>
        readings.TryGetValue(name, out double reading) ? reading : readOff.TryGetValue(name, out CurveReadOff? read) ? read.Value : double.NaN;

    /// <summary>A reading as it is, and what is read off a curve by hand as far as hand and points allow.</summary>
    private ValueRange RangeOf(string name) =>
        !readings.ContainsKey(name) && readOff.TryGetValue(name, out CurveReadOff? read) ? new ValueRange(read.Low, read.High) : ValueRange.Of(Reading(name));

    /// <summary>A reading or an earlier answer as written, or not a number.</summary>
    public double AtHand(string name) => written.TryGetValue(name, out AnswerText.Number? number) ? number.Value : Reading(name);

    /// <summary>Whether an answer was written and can be read.</summary>
    public bool HasWritten(string answer) => written.ContainsKey(answer);

    /// <summary>The written answers that an answer rests on: those it uses, and behind one that was left out those that it uses.</summary>
    public IEnumerable<string> WrittenBehind(AskedValue value) =>
        value.Uses.SelectMany(id => HasWritten(id) ? [id] : WrittenBehind(asked[id])).Distinct(StringComparer.Ordinal);

    /// <summary>Whether an answer was written with two figures or more.</summary>
    public bool IsFinelyWritten(string answer) => written.TryGetValue(answer, out AnswerText.Number? number) && number.Figures > 1;

    /// <summary>Keeps an answer for those after it.</summary>
    /// <param name="answer">Its id.</param>
    /// <param name="number">As written.</param>
    /// <param name="unrounded">What it may have been before it was rounded, by each set of atomic weights that gives it so; none where it follows from nothing.</param>
    public void Write(string answer, AnswerText.Number number, IReadOnlyList<double> unrounded)
    {
        written[answer] = number;
        if (unrounded.Count > 0)
        {
            followed[answer] = new ValueRange(Math.Min(number.Value, unrounded.Min()), Math.Max(number.Value, unrounded.Max()));
        }
    }


    /// <summary>An answer from the readings alone, unrounded, or not a number.</summary>
    public double Exact(AskedValue value, Func<string, double> molarMass)
    {
        ValueRange range = ValueRange.Of(value.Expanded, name => ValueRange.Of(Reading(name)), molarMass);
        return range.IsKnown ? range.Middle : double.NaN;
    }

    /// <summary>Where an answer may lie that is worked out rightly from the readings, values on the way rounded as one may.</summary>
    public ValueRange Right(AskedValue value, Func<string, double> molarMass, int figures = UnseenFigures) => ValueRange.Of(
        value.Answer.Formula,
        name => asked.TryGetValue(name, out AskedValue? earlier) ? Widened(Right(earlier, molarMass, figures), earlier.IsDifference, figures) : RangeOf(name),
        molarMass);

    /// <summary>Where it may lie when worked out rightly from what the student wrote before.</summary>
    public ValueRange Own(AskedValue value, Func<string, double> molarMass, int figures = UnseenFigures) =>
        ValueRange.Of(value.Answer.Formula, name => OwnOf(name, molarMass, asWritten: false, figures), molarMass);

    /// <summary>What comes out with the earlier answers exactly as written.</summary>
    public double FromWritten(AskedValue value, Func<string, double> molarMass)
    {
        ValueRange range = ValueRange.Of(value.Answer.Formula, name => OwnOf(name, molarMass, asWritten: true), molarMass);
        return range.IsKnown ? range.Middle : double.NaN;
    }

    private ValueRange OwnOf(string name, Func<string, double> molarMass, bool asWritten, int figures = UnseenFigures)
    {
        if (written.TryGetValue(name, out AnswerText.Number? number))
        {
            // A difference with all its decimals was not rounded, and of what follows from something the digits before rounding are known.
            bool exact = asWritten || (asked[name].IsDifference && number.Decimals >= DecimalsOf(asked[name].Expanded));
            return exact ? ValueRange.Of(number.Value)
                : followed.TryGetValue(name, out ValueRange before) ? before
                : ValueRange.About(number.Value, number.HalfWidth);
        }

        return !asked.TryGetValue(name, out AskedValue? earlier) ? (asWritten ? ValueRange.Of(Reading(name)) : RangeOf(name))
            : asWritten ? ValueRange.Of(FromWritten(earlier, molarMass))
            : Widened(Own(earlier, molarMass, figures), earlier.IsDifference, figures);
    }

    private static ValueRange Widened(ValueRange range, bool isDifference, int figures = UnseenFigures)
    {
        double middle = Math.Abs(range.Middle);
        double half = isDifference || middle == 0 || !range.IsKnown ? 0 : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(middle)) - figures + 1);
        return range.IsKnown ? new ValueRange(range.Low - half, range.High + half) : range;
    }
}
