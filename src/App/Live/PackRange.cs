namespace Calx.App.Live;

/// <summary>What is accepted as an answer of somebody who stopped after a heating.</summary>
/// <param name="Heating">Which heating, from 1.</param>
/// <param name="Answer">Id of the answer.</param>
/// <param name="Low">From here.</param>
/// <param name="High">To here.</param>
public readonly record struct PackRange(int Heating, string Answer, double Low, double High);
