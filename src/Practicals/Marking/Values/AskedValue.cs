using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking.Values;

/// <summary>One asked value, made ready to be marked many times.</summary>
internal sealed class AskedValue
{
    private readonly Lazy<IdeaSearch> fromReadings;
    private readonly Lazy<IdeaSearch> fromAnswers;

    public AskedValue(AnswerDefinition answer, MarkingFacts facts)
    {
        Answer = answer;
        Expanded = facts.Expanded(answer.Formula);
        Uses = [.. answer.Formula.Names.Where(name => facts.Answers.Any(a => a.Id == name))];
        // What is read off a curve is no difference of readings, and has no decimals of the balance.
        IsDifference = Expanded.Names.All(facts.Readings.ContainsKey) && Expanded.Nodes.All(n => n is NameTerm or BinaryOperation { Operator: Operator.Add or Operator.Subtract });
        fromReadings = new(() => new IdeaSearch(VariantSet.Of(Expanded, facts), facts));
        fromAnswers = new(() => new IdeaSearch(VariantSet.Of(answer.Formula, facts), facts));
    }

    /// <summary>What is asked for.</summary>
    public AnswerDefinition Answer { get; }

    /// <summary>Its formula down to the readings.</summary>
    public Expression Expanded { get; }

    /// <summary>Ids of the earlier answers that it uses.</summary>
    public IReadOnlyList<string> Uses { get; }

    /// <summary>Whether readings are added and taken away, and no more.</summary>
    public bool IsDifference { get; }

    /// <summary>Ideas of somebody who went from the readings to this value.</summary>
    public IdeaSearch FromReadings => fromReadings.Value;

    /// <summary>Ideas of somebody who took the last step from the earlier answers as written.</summary>
    public IdeaSearch FromAnswers => fromAnswers.Value;
}
