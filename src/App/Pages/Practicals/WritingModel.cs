using Calx.Practicals.Drafting;

namespace Calx.App.Pages.Practicals;

/// <summary>A practical that is being written: the questions, its file, and what the file comes to.</summary>
/// <param name="Id">The practical that is edited; null for a new one.</param>
/// <param name="Answers">What was answered, by question; null where the questions are not asked.</param>
/// <param name="Draft">The draft of these answers, or null.</param>
/// <param name="Text">The file's text.</param>
/// <param name="Preview">What it comes to.</param>
/// <param name="Versions">Numbers of the versions that were saved over, the latest first.</param>
/// <param name="Shown">The earlier version that is shown, or null for the newest.</param>
/// <param name="Fault">Why it was not saved, or null.</param>
public sealed record WritingModel(
    string? Id,
    IReadOnlyDictionary<string, string>? Answers,
    Draft? Draft,
    string Text,
    WritingPreview Preview,
    IReadOnlyList<int> Versions,
    int? Shown,
    string? Fault)
{
    /// <summary>The version that was just saved, or null.</summary>
    public int? Saved { get; init; }

    /// <summary>The mark of the text that the answers wrote last; a text with another mark was changed by hand.</summary>
    public string Written { get; init; } = "";
}
