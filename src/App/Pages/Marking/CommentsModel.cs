using Calx.App.Pages.Lessons;

namespace Calx.App.Pages.Marking;

/// <summary>The school's own comments, to be changed.</summary>
/// <param name="Address">Address of the class view from which the page was opened.</param>
/// <param name="Texts">All ten, by key.</param>
/// <param name="Said">What was done or is wrong.</param>
public sealed record CommentsModel(string Address, IReadOnlyList<string> Texts, PageSaid Said);
