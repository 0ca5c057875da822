namespace Calx.Papers.Documents;

/// <summary>A paper: what is on it, whatever the form it is written in.</summary>
public sealed class Paper
{
    /// <summary>Makes one.</summary>
    /// <param name="id">What its file is called.</param>
    /// <param name="title">Its title.</param>
    /// <param name="heads">What stands at the head and foot of each of its pages.</param>
    /// <param name="content">What is on it.</param>
    /// <param name="look">How it is printed; null for A4 with letters of usual size.</param>
    public Paper(string id, Phrase title, RunningHeads heads, IReadOnlyList<PaperBlock> content, PaperLook? look = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(heads);
        ArgumentNullException.ThrowIfNull(content);
        (Id, Title, Heads, Content, Look) = (id, title, heads, content, look ?? PaperLook.Usual);
    }

    /// <summary>What its file is called, without the ending.</summary>
    public string Id { get; }

    /// <summary>Its title.</summary>
    public Phrase Title { get; }

    /// <summary>Whether its title stands above what is on it; its running heads say it in any case.</summary>
    public bool ShowsTitle { get; init; } = true;

    /// <summary>What stands at the head and foot of each of its pages.</summary>
    public RunningHeads Heads { get; }

    /// <summary>What is on it, from the top.</summary>
    public IReadOnlyList<PaperBlock> Content { get; }

    /// <summary>How it is printed.</summary>
    public PaperLook Look { get; }
}
