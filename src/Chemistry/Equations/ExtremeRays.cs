using System.Numerics;

namespace Calx.Chemistry.Equations;

/// <summary>
/// The elementary balancings: the extreme rays of the cone A x = 0, x >= 0, by the double description method. The rays
/// of the cone that is bounded at the free columns alone are the basis of the null space; each further column cuts the
/// cone, and a positive and a negative ray that share a face are joined where the cut meets it. Two rays share a face
/// where no third is 0 wherever both are 0.
/// </summary>
internal static class ExtremeRays
{
    /// <summary>The rays, each without common divisor, in no order; null where there are too many.</summary>
    /// <param name="basis">As <see cref="NullSpace"/> gives it.</param>
    public static List<BigInteger[]>? Of(BigInteger[][] basis)
    {
        List<Ray> rays = [.. basis.Select(vector => new Ray(vector))];
        int columns = basis.Length == 0 ? 0 : basis[0].Length;
        ulong cut = FreeColumns(basis);
        for (int column = 0; column < columns; column++)
        {
            ulong bit = 1UL << column;
            if ((cut & bit) == 0)
            {
                List<Ray>? next = Cut(rays, column, cut);
                if (next is null)
                {
                    return null;
                }

                rays = next;
                cut |= bit;
            }
        }

        return [.. rays.Select(ray => ray.Entries)];
    }

    // Of the columns that are 0 in all vectors but one, which has its own: one a vector will do.
    private static ulong FreeColumns(BigInteger[][] basis)
    {
        ulong free = 0;
        for (int i = 0; i < basis.Length; i++)
        {
            int own = Enumerable.Range(0, basis[i].Length)
                .First(column => basis[i][column].Sign > 0
                    && basis.All(other => ReferenceEquals(other, basis[i]) || other[column].IsZero));
            free |= 1UL << own;
        }

        return free;
    }

    private static List<Ray>? Cut(List<Ray> rays, int column, ulong cut)
    {
        List<Ray> kept = [.. rays.Where(ray => ray.Entries[column].Sign >= 0)];
        List<Ray> outside = [.. rays.Where(ray => ray.Entries[column].Sign < 0)];
        foreach (Ray inside in rays.Where(ray => ray.Entries[column].Sign > 0))
        {
            foreach (Ray other in outside)
            {
                if (ShareFace(rays, inside, other, cut))
                {
                    kept.Add(Joined(inside, other, column));
                }
            }

            if (kept.Count > EquationLimits.ElementaryBalancings)
            {
                return null;
            }
        }

        return kept;
    }

    private static bool ShareFace(List<Ray> rays, Ray a, Ray b, ulong cut)
    {
        ulong outside = cut & ~(a.Support | b.Support);
        foreach (Ray ray in rays)
        {
            if ((ray.Support & outside) == 0 && !ReferenceEquals(ray, a) && !ReferenceEquals(ray, b))
            {
                return false;
            }
        }

        return true;
    }

    private static Ray Joined(Ray inside, Ray outside, int column)
    {
        BigInteger a = inside.Entries[column];
        BigInteger b = -outside.Entries[column];
        var entries = new BigInteger[inside.Entries.Length];
        BigInteger divisor = BigInteger.Zero;
        for (int i = 0; i < entries.Length; i++)
        {
            entries[i] = (inside.Entries[i] * b) + (outside.Entries[i] * a);
            divisor = BigInteger.GreatestCommonDivisor(divisor, entries[i]);
        }

        for (int i = 0; i < entries.Length; i++)
        {
            entries[i] /= divisor;
        }

        return new Ray(entries);
    }

    private sealed class Ray
    {
        public Ray(BigInteger[] entries)
        {
            Entries = entries;
            for (int i = 0; i < entries.Length; i++)
            {
                Support |= entries[i].IsZero ? 0 : 1UL << i;
            }
        }

        public BigInteger[] Entries { get; }

        public ulong Support { get; }
    }
}
