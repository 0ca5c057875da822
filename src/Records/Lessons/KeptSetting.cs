namespace Calx.Records.Lessons;

/// <summary>A setting of the school.</summary>
/// <param name="Key">Its name.</param>
/// <param name="Value">Its value.</param>
/// <param name="IsSecret">Whether the value is left out of the audit and of every export.</param>
public sealed record KeptSetting(string Key, string Value, bool IsSecret);
