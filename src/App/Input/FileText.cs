namespace Calx.App.Input;

/// <summary>What came of reading a text file that a person named.</summary>
internal abstract record FileText
{
    private FileText()
    {
    }

    /// <summary>The file's text.</summary>
    public sealed record Read(string Text) : FileText;

    /// <summary>Why there is none: one line that begins with the file's name.</summary>
    public sealed record Unreadable(string Line) : FileText;
}
