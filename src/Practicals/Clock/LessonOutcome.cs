namespace Calx.Practicals.Clock;

/// <summary>How one lesson went, in minutes from the bell that began it.</summary>
/// <param name="End">When everything was done.</param>
/// <param name="FlameOut">When the last flame was put out; 0 where none burnt.</param>
/// <param name="Weighed">When the last group had taken its last reading.</param>
/// <param name="Joined">How many groups lost their vessel and joined another's data.</param>
/// <param name="Heatings">Heatings of all groups.</param>
internal readonly record struct LessonOutcome(double End, double FlameOut, double Weighed, int Joined, int Heatings);
