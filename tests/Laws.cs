using CsCheck;

namespace Calx.Tests;

/// <summary>
/// Properties over drawn cases. The cases are the same in every run, so a test that passed here passes elsewhere; the long run draws
/// twenty times as many. (The library's own <c>Sample</c> fixes the first case only.)
/// </summary>
internal static class Laws
{
    private const int UsualCases = 100;
    private const uint Stream = 17;

    /// <summary>Checks that a law holds in every drawn case.</summary>
    /// <param name="cases">What is drawn.</param>
    /// <param name="law">Fails where it does not hold.</param>
    /// <param name="iter">How many cases.</param>
    public static void Always<T>(this Gen<T> cases, Action<T> law, int iter = UsualCases)
    {
        int count = Environment.GetEnvironmentVariable("CALX_LONG") == "1" ? 20 * iter : iter;
        for (int i = 0; i < count; i++)
        {
            T drawn = cases.Generate(new PCG(Stream, (ulong)i), null, out _);
            try
            {
                law(drawn);
            }
            catch (Exception failure)
            {
                throw new InvalidOperationException($"Case {i}: {Check.Print(drawn)}\n{failure.Message}", failure);
            }
        }
    }

    /// <summary>As above, of two.</summary>
    public static void Always<T1, T2>(this Gen<(T1, T2)> cases, Action<T1, T2> law, int iter = UsualCases) =>
        cases.Always(drawn => law(drawn.Item1, drawn.Item2), iter);

    /// <summary>As above, of three.</summary>
    public static void Always<T1, T2, T3>(this Gen<(T1, T2, T3)> cases, Action<T1, T2, T3> law, int iter = UsualCases) =>
        cases.Always(drawn => law(drawn.Item1, drawn.Item2, drawn.Item3), iter);

    /// <summary>As above, of four.</summary>
    public static void Always<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> cases, Action<T1, T2, T3, T4> law, int iter = UsualCases) =>
        cases.Always(drawn => law(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4), iter);

    /// <summary>As above, of five.</summary>
    public static void Always<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> cases, Action<T1, T2, T3, T4, T5> law, int iter = UsualCases) =>
        cases.Always(drawn => law(drawn.Item1, drawn.Item2, drawn.Item3, drawn.Item4, drawn.Item5), iter);
}
