using Calx.Measurement.Numbers;

namespace Calx.Practicals.Model.Slips;

/// <summary>A number that the balance may have shown though another was written.</summary>
/// <param name="Displayed">As it stood on the display.</param>
/// <param name="Probability">That a slip turns it into the one written, given that a slip happens.</param>
internal sealed record SlipCandidate(WrittenNumber Displayed, double Probability);
