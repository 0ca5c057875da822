using Calx.Measurement.Expressions;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>
/// Finds the quantities of a practical from groups' readings, with uncertainty and budget. What depends only on which
/// readings were taken is worked out once and kept; not for use from several threads at once.
/// </summary>
public sealed class GroupEstimator
{
    private readonly Practical practical;
    private readonly BalanceReport balance;
    private readonly EngineLanguage language;
    private readonly PreparedQuantity[] quantities;
    private readonly Dictionary<string, Prepared> patterns = new(StringComparer.Ordinal);

    /// <summary>Prepares a practical's quantities.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="balance">Resolution and repeatability of the readings.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="language">The language of the reasons; British where nothing else is said.</param>
    public GroupEstimator(Practical practical, BalanceReport balance, AtomicWeights weights, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(balance);
        ArgumentNullException.ThrowIfNull(weights);
        this.practical = practical;
        this.balance = balance;
        this.language = language ?? EngineLanguage.British;
        quantities = [.. practical.Quantities.Select(q => new PreparedQuantity(q, weights, this.language))];
    }

    /// <summary>Every quantity of the practical, in its order: found, or not and why.</summary>
    public IReadOnlyList<QuantityResult> Estimate(GroupReadings group)
    {
        ArgumentNullException.ThrowIfNull(group);
        Prepared prepared = PreparedFor(group);
        TakenReading[] used = [.. prepared.Pattern.Used.Select(id => group.Find(id)!)];
        double[] values = [.. used.Select(r => r.Value.AsDouble)];
        double[] uncertainties = [.. used.Select(UncertaintyOf)];
        SharedError[] shared = prepared.Gauges.IsEmpty ? [] : [.. prepared.Gauges.Shared(values)];
        var results = new QuantityResult[quantities.Length];
        for (int q = 0; q < results.Length; q++)
        {
            results[q] = prepared.Missing[q] is string reason
                ? new QuantityNotFound(quantities[q].Quantity, reason)
                : quantities[q].Estimate(prepared.Pattern, values, uncertainties, shared, DecimalsOf(quantities[q].Quantity, used));
        }

        return results;
    }

    /// <summary>Ready-made masses that do not agree with the group's own readings, a sentence each: the readings are
    /// taken, since a subtraction is not a second measurement.</summary>
    public IEnumerable<string> Contradictions(GroupReadings group)
    {
        ArgumentNullException.ThrowIfNull(group);
        ReadingPattern pattern = PreparedFor(group).Pattern;
        foreach (TakenReading column in group.DerivedColumns.Where(c => pattern.Repeated.Contains(c.Id)))
        {
            double[] weights = pattern.Predict(column.Id)!;
            double expected = weights.Zip(pattern.Used, (w, id) => w * group.Find(id)!.Value.AsDouble).Sum();
            // A right subtraction agrees to the last digit; half of one allows for binary fractions.
            if (Math.Abs(expected - column.Value.AsDouble) > 0.5 * (double)column.LastDigit)
            {
                string label = practical.FindColumn(column.BaseId)?.Label ?? column.Id;
                yield return new QuantityTexts(language).Contradicted(
                    label, column.AsWritten, $"{Figures.Text(expected, column.Value.Decimals)} {column.Unit}");
            }
        }
    }

    /// <summary>Standard uncertainty of one reading or ready-made column by itself, in its unit (docs/methods/intervals.md): what an
    /// instrument is out by for all its readings together is not in it.</summary>
    public double UncertaintyOf(TakenReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (practical.Readings.FirstOrDefault(r => r.Id == reading.BaseId) is { Errors: InstrumentErrors errors } gauge)
        {
            return Math.Sqrt(errors.ReadingVariance((double)balance.ResolutionOf(gauge)));
        }

        if (practical.FindColumn(reading.BaseId) is ColumnDefinition { Stands: Expression stands }
            && practical.Readings.FirstOrDefault(r => !r.IsWeighing && stands.Names.Contains(r.Id)) is { Errors: InstrumentErrors ofColumn } read)
        {
            return Math.Sqrt(2 * ofColumn.ReadingVariance((double)balance.ResolutionOf(read)));
        }

        double division = (double)balance.ResolutionOf(reading.BaseId);
        double rounding = division * division / 12;
        double scatter = balance.RepeatabilityInDivisions * division;
        double variance = practical.FindColumn(reading.BaseId)?.Kind switch
        {
            null => rounding + scatter * scatter,
            ColumnKind.Tared => rounding + 2 * scatter * scatter,
            _ => 2 * (rounding + scatter * scatter),
        };
        return Math.Sqrt(variance);
    }

    /// <summary>As many as the readings have from which it is a sum; null where it is none, or in another unit.</summary>
    private int? DecimalsOf(QuantityDefinition quantity, TakenReading[] used)
    {
        TakenReading[] alike = [.. used.Where(r => r.Unit == quantity.Unit)];
        bool ofGauges = practical.Readings.Any(r => !r.IsWeighing && quantity.Formula.Names.Contains(r.Id));
        bool isSum = quantity.Formula.Names.All(name => quantity.Formula.Derivative(name).Simplified().Names.Count == 0);
        return ofGauges
            ? isSum && alike.Length > 0 ? alike.Where(r => quantity.Formula.Names.Contains(r.BaseId)).Select(r => r.Value.Decimals).DefaultIfEmpty(0).Max() : null
            : quantity.Unit == "g" ? alike.Select(r => r.Value.Decimals).DefaultIfEmpty(0).Max() : null;
    }

    private Prepared PreparedFor(GroupReadings group)
    {
        string key = string.Join(' ', group.Readings.Concat(group.DerivedColumns).Select(r => r.Id));
        if (!patterns.TryGetValue(key, out Prepared? prepared))
        {
            patterns[key] = prepared = new Prepared(practical, group, quantities, language);
        }

        return prepared;
    }

    private sealed class Prepared
    {
        public Prepared(Practical practical, GroupReadings group, PreparedQuantity[] quantities, EngineLanguage language)
        {
            string[] readings = [.. group.Readings.Select(r => r.Id)];
            string[] columns = [.. group.DerivedColumns.Select(r => r.Id)];
            Pattern = new ReadingPattern(practical, readings, columns, Repeats.Implied(practical, readings.Concat(columns)));
            Dictionary<string, string> why = Identifiability.Of(practical, readings, columns, language).Undetermined
                .ToDictionary(missing => missing.Quantity.Id, missing => missing.Why, StringComparer.Ordinal);
            Gauges = new GaugeErrors(practical, Pattern.Used);
            Missing = [.. quantities.Select(q => why.GetValueOrDefault(q.Quantity.Id))];
        }

        public ReadingPattern Pattern { get; }

        public GaugeErrors Gauges { get; }

        /// <summary>For each quantity why it cannot be found, or null where it can.</summary>
        public string?[] Missing { get; }
    }
}
