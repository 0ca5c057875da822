using Calx.App.Live;
using Calx.App.Serving;

namespace Calx.App.Pages.Answers;

/// <summary>The page on which a student says who answers on a device.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Seat">The device.</param>
/// <param name="Choices">The students to choose from, under the heading of their group.</param>
public sealed record WhoModel(LessonView View, Seat Seat, IReadOnlyList<(string Heading, IReadOnlyList<StudentChoice> Students)> Choices)
{
    /// <summary>The student whose word is asked for, or null.</summary>
    public StudentChoice? Asked { get; init; }

    /// <summary>What is wrong, or null.</summary>
    public string? Fault { get; init; }
}
