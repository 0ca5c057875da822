namespace Calx.Practicals.Clock;

/// <summary>
/// Evenly drawn numbers of one lesson, by where they are used: those of one group's step do not depend on which other steps
/// there are, so that two plans are compared on the same lesson. A counter through the mixing function of splitmix64 (G. L.
/// Steele, D. Lea and C. H. Flood, OOPSLA 2014).
/// </summary>
internal readonly struct LessonDraws(ulong seed, int lesson)
{
    private const ulong Golden = 0x9E3779B97F4A7C15;

    private readonly ulong key = Mix(unchecked(Mix(seed + Golden) + (((ulong)lesson + 1) * Golden)));

    /// <summary>A number between 0 and 1; neither end ever comes.</summary>
    /// <param name="group">Whose; -1 for the class.</param>
    /// <param name="use">For what.</param>
    public double Even(int group, int use)
    {
        ulong counter = unchecked(key + (((ulong)(group + 1) << 32) + (ulong)use + 1) * Golden);
        return ((Mix(counter) >> 12) + 0.5) * (1.0 / (1UL << 52));
    }

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
