using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>What the engine says of one group at one moment.</summary>
/// <param name="AtWork">What is known of it.</param>
/// <param name="Now">Where it stands.</param>
/// <param name="Advice">What it is to do.</param>
/// <param name="Attention">What needs the teacher there.</param>
public sealed record GroupFacts(GroupAtWork AtWork, GroupNow Now, Advice Advice, Attention Attention);
