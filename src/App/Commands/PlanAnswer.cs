using Calx.App.Input;
using Calx.Practicals.Planning;

namespace Calx.App.Commands;

/// <summary>What <c>calx plan</c> answers.</summary>
/// <param name="Choice">What was asked.</param>
/// <param name="Seed">Which of the possible simulations.</param>
/// <param name="Plan">The plan, or null where none is made.</param>
/// <param name="Reason">Why none is made, or null.</param>
internal sealed record PlanAnswer(PlanChoice Choice, ulong Seed, Plan? Plan, string? Reason);
