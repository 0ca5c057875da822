namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Fewer atoms for many: even steps along the weights laid end to end, in the order of the atoms. What any run of atoms
/// weighs is kept to within one step, and nothing is drawn.
/// </summary>
internal static class Thinning
{
    /// <summary>The atoms that a step falls into, each with how many do.</summary>
    /// <param name="atoms">The atoms.</param>
    /// <param name="share">Weight of an atom; all add up to 1.</param>
    /// <param name="most">How many steps.</param>
    public static IEnumerable<(Atom Atom, int Steps)> Of(IReadOnlyList<Atom> atoms, Func<Atom, double> share, int most)
    {
        double along = 0;
        int taken = 0;
        foreach (Atom atom in atoms)
        {
            along += share(atom);
            int reached = Math.Min(most, (int)Math.Floor((along * most) + 0.5));
            if (reached > taken)
            {
                yield return (atom, reached - taken);
                taken = reached;
            }
        }
    }
}
