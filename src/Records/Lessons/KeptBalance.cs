using Calx.Measurement.Numbers;

namespace Calx.Records.Lessons;

/// <summary>A balance of the school. Its unit is the gram.</summary>
public sealed record KeptBalance
{
    /// <summary>Longest letter.</summary>
    public const int LongestLetter = 8;

    /// <summary>Longest label.</summary>
    public const int LongestLabel = 200;

    /// <summary>Takes a balance.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="letter">The letter or number printed on it.</param>
    /// <param name="label">What it is and where it stands; may be empty.</param>
    /// <param name="resolution">Its last digit's step in grams as written, such as <c>0.01</c>, above 0.</param>
    /// <exception cref="ArgumentException">A text is blank or too long, the resolution is no number above 0, or there is no id.</exception>
    public KeptBalance(RecordId id, string letter, string label, string resolution)
    {
        Id = Given.Id(id, nameof(id));
        Letter = KeptText.Needed(letter, LongestLetter, nameof(letter));
        Label = KeptText.MayBeEmpty(label, LongestLabel, nameof(label));
        Resolution = WrittenNumber.TryParse(resolution, out WrittenNumber step) && step.Value > 0
            ? resolution
            : throw new ArgumentException("A resolution is a number of grams above 0, such as 0.01.", nameof(resolution));
    }

    /// <summary>Its id.</summary>
    public RecordId Id { get; }

    /// <summary>The letter or number printed on it.</summary>
    public string Letter { get; }

    /// <summary>What it is and where it stands.</summary>
    public string Label { get; }

    /// <summary>Its last digit's step in grams, as written.</summary>
    public string Resolution { get; }
}
