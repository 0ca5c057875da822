namespace Calx.App.Pages.Answers;

/// <summary>A student who may answer on a device.</summary>
/// <param name="Number">The number in the class.</param>
/// <param name="Name">The name where names are shown, or the number in words.</param>
/// <param name="Answered">How many questions are answered.</param>
/// <param name="NeedsWord">Whether another device answers for the student, so that the student's word is asked for.</param>
public sealed record StudentChoice(int Number, string Name, int Answered, bool NeedsWord);
