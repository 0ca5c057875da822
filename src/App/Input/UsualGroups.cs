using System.Globalization;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>How many groups a lesson has where nothing is said, and how many it may have.</summary>
internal static class UsualGroups
{
    /// <summary>Of a practical that a whole class may do.</summary>
    private const int OfAClass = 12;

    /// <summary>The usual number: no more than may do it side by side.</summary>
    public static int Of(Practical practical) => Math.Min(OfAClass, practical.Limits.Groups ?? OfAClass);

    /// <summary>Why so many may not do it, or null.</summary>
    public static string? TooMany(Practical practical, int groups) => practical.Limits is { Groups: int most } limits && groups > most
        ? string.Create(
            CultureInfo.InvariantCulture,
            $"{groups} groups are more than may do it side by side: {most} at most{(limits.Note is null ? "" : $" ({limits.Note})")}")
        : null;
}
