using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>How many decimals a balance shows, as a sentence has it: 'two decimals'.</summary>
public static class DecimalsInWords
{
    /// <summary>The words.</summary>
    /// <param name="decimals">From 0.</param>
    /// <param name="language">The language; British where nothing else is said.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static string Of(int decimals, EngineLanguage? language = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        return new Wording(language ?? EngineLanguage.British).Decimals(decimals);
    }
}
