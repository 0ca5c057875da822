namespace Calx.Practicals.Model;

/// <summary>What a perfect balance would show at each weighing of one group, in g, by id: <c>empty</c>, <c>after2</c>.</summary>
public sealed class TrueMasses
{
    private readonly Dictionary<string, double> byId;
    private readonly Dictionary<string, string> lastOf;

    internal TrueMasses(Dictionary<string, double> byId, Dictionary<string, string> lastOf)
    {
        this.byId = byId;
        this.lastOf = lastOf;
    }

    /// <summary>Ids in the order of weighing.</summary>
    public IReadOnlyCollection<string> Ids => byId.Keys;

    /// <summary>The mass at a weighing.</summary>
    /// <exception cref="KeyNotFoundException">There was no such weighing.</exception>
    public double At(string id) => byId[id];

    /// <summary>The mass at the last weighing of a reading: what a formula means by the reading's id.</summary>
    public double Last(string readingId) => byId[lastOf[readingId]];
}
