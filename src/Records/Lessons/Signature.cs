namespace Calx.Records.Lessons;

/// <summary>A teacher's word that a practical was checked against the employer's risk assessment, and tried out.</summary>
public sealed record Signature
{
    /// <summary>Longest text.</summary>
    public const int LongestText = 200;

    /// <summary>Takes a signature.</summary>
    /// <param name="practicalId">The practical.</param>
    /// <param name="practicalVersion">Its version, from 1.</param>
    /// <param name="fingerprint">What it was signed for: amounts, concentrations and steps, so that a change of them asks for another.</param>
    /// <param name="initials">Who signed.</param>
    /// <param name="at">When.</param>
    /// <exception cref="ArgumentException">A text is blank or too long, or the version is below 1.</exception>
    public Signature(string practicalId, int practicalVersion, string fingerprint, string initials, DateTimeOffset at)
    {
        PracticalId = KeptText.Needed(practicalId, Lesson.LongestName, nameof(practicalId));
        PracticalVersion = Given.AtLeast(1, practicalVersion, nameof(practicalVersion));
        Fingerprint = KeptText.Needed(fingerprint, LongestText, nameof(fingerprint));
        Initials = KeptText.Needed(initials, LongestText, nameof(initials));
        At = at;
    }

    /// <summary>The practical.</summary>
    public string PracticalId { get; }

    /// <summary>Its version.</summary>
    public int PracticalVersion { get; }

    /// <summary>What it was signed for.</summary>
    public string Fingerprint { get; }

    /// <summary>Who signed.</summary>
    public string Initials { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }
}
