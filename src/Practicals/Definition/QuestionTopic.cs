namespace Calx.Practicals.Definition;

/// <summary>What a question in words is about.</summary>
public enum QuestionTopic
{
    /// <summary>What the readings show.</summary>
    Conclusion,

    /// <summary>How far they can be trusted, and what would be better.</summary>
    Evaluation,
}
