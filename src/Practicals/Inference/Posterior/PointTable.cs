namespace Calx.Practicals.Inference.Posterior;

/// <summary>What the weighings of each point look like as straight lines in the amounts put in.</summary>
/// <param name="Weighings">How many weighings a walk has.</param>
/// <param name="Amounts">How many amounts are put in.</param>
/// <param name="Slopes">g per g: point by point, weighing by weighing, amount by amount.</param>
/// <param name="Intercepts">g: point by point, weighing by weighing; shifts of the readings included.</param>
/// <param name="Widths">g²: point by point, weighing by weighing; for how much of a mass's law a point stands.</param>
internal sealed record PointTable(int Weighings, int Amounts, double[] Slopes, double[] Intercepts, double[] Widths);
