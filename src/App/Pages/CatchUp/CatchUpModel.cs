using Calx.Papers.Documents;
using Calx.Records.Lessons;

namespace Calx.App.Pages.CatchUp;

/// <summary>What the page of a lesson's papers shows of its catch-up packs.</summary>
/// <param name="Address">The lesson's address.</param>
/// <param name="Work">What its work is called.</param>
/// <param name="Papers">The sheets and the key, each with whose it is; empty where no pack was made.</param>
/// <param name="Waiting">Those who were away and have no pack yet.</param>
/// <param name="Level">How much the sheets help.</param>
/// <param name="Fault">What is wrong, or null.</param>
public sealed record CatchUpModel(
    string Address, WorkWords Work, IReadOnlyList<(string Whose, Paper Paper)> Papers, IReadOnlyList<Member> Waiting, string Level, string? Fault);
