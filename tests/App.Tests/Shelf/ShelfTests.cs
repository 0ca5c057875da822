using Calx.Practicals.Definition;

namespace Calx.App.Tests.Shelf;

/// <summary>Everything that Calx does, with every practical of the shelf.</summary>
public sealed class ShelfTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_practical_serves_every_use(string id) => new EveryUse(id, folder).Check();

    public void Dispose() => folder.Dispose();
}
