namespace Calx.Practicals.Findings;

/// <summary>Something to talk about when the readings are in: a finding with the question that it raises.</summary>
public sealed class TalkingPoint
{
    internal TalkingPoint(TalkingTopic topic, string text, string? withoutNames = null, bool mentionsOdd = false)
    {
        Topic = topic;
        Text = text;
        WithoutNames = withoutNames ?? text;
        MentionsOdd = mentionsOdd;
    }

    /// <summary>What it is about.</summary>
    public TalkingTopic Topic { get; }

    /// <summary>A sentence or two and a question. It names no cause.</summary>
    public string Text { get; }

    /// <summary>The same without the name of any group.</summary>
    public string WithoutNames { get; }

    /// <summary>Whether it says that a result is odd: not for a class's eyes until the teacher shows it.</summary>
    public bool MentionsOdd { get; }

    /// <summary>Whether it tells the accepted value: likewise.</summary>
    public bool TellsAccepted => Topic == TalkingTopic.Bias;
}
