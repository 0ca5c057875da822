using Calx.Records.Lessons;

namespace Calx.Records.Archive;

/// <summary>What an archive holds, in the order in which it is written and taken in.</summary>
internal sealed class ArchiveContent
{
    public List<SchoolClass> Classes { get; } = [];

    public List<Member> Members { get; } = [];

    public List<KeptBalance> Balances { get; } = [];

    public List<BalanceCheck> Checks { get; } = [];

    public List<Signature> Signatures { get; } = [];

    public List<NumberDecision> Decisions { get; } = [];

    public List<ArchivedLesson> Lessons { get; } = [];
}
