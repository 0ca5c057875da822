namespace Calx.App.Commands;

/// <summary>What is asked of past lessons on the command line.</summary>
/// <param name="ClassName">For which class; empty for any.</param>
/// <param name="Groups">Groups of the next lesson; null for the practical's usual number.</param>
/// <param name="Accept">Ids of the numbers to accept.</param>
/// <param name="TakeBack">Ids of the numbers to take back.</param>
/// <param name="Initials">Who decides.</param>
/// <param name="AsJson">Whether the answer is one JSON document.</param>
internal sealed record LearnedWish(
    string ClassName, int? Groups, IReadOnlyList<string> Accept, IReadOnlyList<string> TakeBack, string Initials, bool AsJson);
