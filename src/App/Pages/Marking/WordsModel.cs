using Calx.Records.Lessons;
using Calx.Practicals.Definition;

namespace Calx.App.Pages.Marking;

/// <summary>The answers in words, one at a time.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="ClassName">Its class.</param>
/// <param name="Title">Title of its practical.</param>
/// <param name="Queue">All of them.</param>
/// <param name="Item">The one that is shown, or null where none waits behind the last.</param>
/// <param name="Last">The one that was marked last, or null.</param>
/// <param name="Questions">Each question that was answered, with how many wait.</param>
/// <param name="Only">Id of the one question that is looked at, or null.</param>
/// <param name="Comments">The teacher's own comments, by key.</param>
/// <param name="Written">The comment that stands in the field, or null for the one that was kept.</param>
/// <param name="Fault">What is wrong, or null.</param>
public sealed record WordsModel(
    Lesson Lesson,
    string ClassName,
    string Title,
    AnswersInWords Queue,
    WordItem? Item,
    WordItem? Last,
    IReadOnlyList<(SheetQuestion Question, int Waiting)> Questions,
    string? Only,
    IReadOnlyList<string> Comments,
    string? Written,
    string? Fault)
{
    /// <summary>Address of the class view.</summary>
    public string Address => $"/lessons/{Lesson.Id}/marking";

    /// <summary>Address of a place in these pages; the question that is looked at goes with it.</summary>
    public string At(string name, string? key) => $"{Address}/words?{name}={Uri.EscapeDataString(key ?? "")}{(Only is null ? "" : $"&only={Uri.EscapeDataString(Only)}")}";
}
