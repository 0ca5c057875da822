namespace Calx.Practicals.Findings;

/// <summary>A sentence of a class's conclusion, with what decides who may see it.</summary>
public sealed class ConclusionSentence
{
    internal ConclusionSentence(ConclusionTopic topic, string text, string? withoutNames = null, bool mentionsOdd = false)
    {
        Topic = topic;
        Text = text;
        WithoutNames = withoutNames ?? text;
        MentionsOdd = mentionsOdd;
    }

    /// <summary>What it is about.</summary>
    public ConclusionTopic Topic { get; }

    /// <summary>The sentence.</summary>
    public string Text { get; }

    /// <summary>The same without the name of any group.</summary>
    public string WithoutNames { get; }

    /// <summary>Whether it says that some results are odd: not for a class's eyes until the teacher shows it.</summary>
    public bool MentionsOdd { get; }

    /// <summary>Whether it tells what the accepted value, formula or equation is.</summary>
    public bool TellsAccepted => Topic is ConclusionTopic.Accepted or ConclusionTopic.Equations or ConclusionTopic.Choice or ConclusionTopic.Formula;
}
