using Calx.Practicals.Inference.Posterior;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>What probably happened in one group, how surely, and what to do next.</summary>
public sealed class GroupDiagnosis
{
    /// <summary>Takes what was worked out.</summary>
    /// <param name="causes">Every cause of the practical and 'as-expected', the likeliest first.</param>
    /// <param name="pairs">Pairs of causes with a probability of at least a thousandth, the likeliest first.</param>
    /// <param name="tied">Sets of causes that the weighings cannot tell apart; most often none or one.</param>
    /// <param name="next">What would tell the causes apart best.</param>
    /// <param name="decision">What the group is to do now.</param>
    /// <param name="forTeacher">Two sentences: cause and strength, and what to do.</param>
    /// <param name="forStudent">Two sentences: a question that leads there and does not give the answer away.</param>
    public GroupDiagnosis(
        IReadOnlyList<CauseProbability> causes,
        IReadOnlyList<CausePair> pairs,
        IReadOnlyList<TiedCauses> tied,
        NextStep next,
        Decision decision,
        string forTeacher,
        string forStudent)
    {
        ArgumentNullException.ThrowIfNull(causes);
        Causes = causes;
        Pairs = pairs;
        Tied = tied;
        Next = next;
        Decision = decision;
        ForTeacher = forTeacher;
        ForStudent = forStudent;
    }

    /// <summary>Every cause of the practical and 'as-expected', the likeliest first; their probabilities add up to 1.</summary>
    public IReadOnlyList<CauseProbability> Causes { get; }

    /// <summary>Pairs of causes, the likeliest first.</summary>
    public IReadOnlyList<CausePair> Pairs { get; }

    /// <summary>Sets of causes that the weighings cannot tell apart.</summary>
    public IReadOnlyList<TiedCauses> Tied { get; }

    /// <summary>What would tell the causes apart best.</summary>
    public NextStep Next { get; }

    /// <summary>What the group is to do now.</summary>
    public Decision Decision { get; }

    /// <summary>Two sentences for the teacher: cause and strength, and what to do.</summary>
    public string ForTeacher { get; }

    /// <summary>Two sentences for the student: a question that does not give the answer away.</summary>
    public string ForStudent { get; }

    /// <summary>The likeliest cause.</summary>
    public CauseProbability First => Causes[0];
}
