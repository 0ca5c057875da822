using System.Globalization;
using Calx.Records.Archive;

namespace Calx.App.Pages.Keeping;

/// <summary>What became of an import, for people.</summary>
/// <param name="Summary">In a sentence.</param>
/// <param name="Refused">What was not taken, a sentence each.</param>
/// <param name="IsFault">Whether nothing could be read at all.</param>
public sealed record ImportWords(string Summary, IReadOnlyList<string> Refused, bool IsFault)
{
    /// <summary>Says it.</summary>
    /// <param name="result">The import.</param>
    /// <param name="file">The file's name as the browser gave it.</param>
    public static ImportWords Of(ImportResult result, string file) => result switch
    {
        ImportResult.Taken taken => new ImportWords(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{file}: {taken.Added} new, {taken.Known} here already just so, {taken.Refused.Count} not taken."),
            taken.Refused,
            IsFault: false),
        ImportResult.Unreadable unreadable => new ImportWords($"{file}: {unreadable.Reason} Nothing was changed.", [], IsFault: true),
        _ => throw new ArgumentException("No other case of an import exists.", nameof(result)),
    };
}
