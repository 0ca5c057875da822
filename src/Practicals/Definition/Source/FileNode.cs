namespace Calx.Practicals.Definition.Source;

/// <summary>A node of a practical's file, as written.</summary>
/// <param name="At">Where it starts.</param>
internal abstract record FileNode(FilePosition At);

/// <summary>A text, number, true or false.</summary>
/// <param name="Text">Its characters, quotes taken off.</param>
/// <param name="Plain">Whether it stood without quotes, so that it may mean a number.</param>
/// <param name="At">Where it starts, the quote included.</param>
internal sealed record ScalarNode(string Text, bool Plain, FilePosition At) : FileNode(At)
{
    /// <summary>Whether nothing is given: <c>key:</c>, <c>null</c> or <c>~</c>.</summary>
    public bool IsNothing => Plain && Text is "" or "~" or "null" or "Null" or "NULL";
}

/// <summary>A list.</summary>
/// <param name="Items">Its items, in order.</param>
/// <param name="At">Where it starts.</param>
internal sealed record ListNode(IReadOnlyList<FileNode> Items, FilePosition At) : FileNode(At);

/// <summary>Keys with values. A key that stood twice is here once, and has been reported.</summary>
/// <param name="Entries">Its entries, in order.</param>
/// <param name="At">Where it starts.</param>
internal sealed record MapNode(IReadOnlyList<FileEntry> Entries, FilePosition At) : FileNode(At);

/// <summary>A node that could not be read and has been reported: it raises no second fault.</summary>
/// <param name="At">Where it starts.</param>
internal sealed record UnreadableNode(FilePosition At) : FileNode(At);

/// <summary>A key with its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">The value.</param>
internal sealed record FileEntry(ScalarNode Key, FileNode Value);
