using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>
/// In which quantities a class is searched for odd results: first the practical's key quantity, then, for readings that it does not
/// use (the open vessel beside the closed one), one more that does, until every reading that bears on a class result is looked
/// at. What is made of the key's own readings needs no search of its own: a gross error in one of them shows in the key.
/// </summary>
internal sealed class JudgedQuantities
{
    private readonly List<QuantityDefinition> all = [];
    private readonly List<HashSet<string>> brought = [];

    /// <summary>Chooses them.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="ideal">Its model, which tells what a larger sample moves.</param>
    /// <param name="main">Id of the key quantity, or of the one that stands in for it.</param>
    /// <param name="isFound">Whether the class's readings give a quantity.</param>
    public JudgedQuantities(Practical practical, IdealRun ideal, string main, Func<string, bool> isFound)
    {
        HashSet<string> seen = [];
        Add(practical.Quantities.First(q => q.Id == main), seen);
        QuantityDefinition[] others = [.. practical.Quantities.Where(q => q.Formula.Names.Any(n => !seen.Contains(n)) && isFound(q.Id))];
        while (others.Length > 0)
        {
            // Groups choose their own amounts: a quantity that these do not move tells an error from a large sample.
            QuantityDefinition next = others.OrderBy(q => ideal.FollowsAmounts(q.Id)).ThenBy(q => q.Formula.Names.Count(seen.Contains)).First();
            Add(next, seen);
            others = [.. others.Where(q => q.Formula.Names.Any(n => !seen.Contains(n)))];
        }
    }

    /// <summary>The quantities, the main one first.</summary>
    public IReadOnlyList<QuantityDefinition> All => all;

    /// <summary>Whether a group that is odd in one of them is left out of a quantity: it rests on a reading that came under suspicion
    /// there.</summary>
    /// <param name="judged">Place in <see cref="All"/>.</param>
    /// <param name="quantity">The quantity.</param>
    public bool SetsAside(int judged, QuantityDefinition quantity) => quantity.Formula.Names.Any(brought[judged].Contains);

    private void Add(QuantityDefinition quantity, HashSet<string> seen)
    {
        all.Add(quantity);
        brought.Add([.. quantity.Formula.Names.Where(seen.Add)]);
    }
}
