using Calx.Measurement.Weighing;

namespace Calx.Practicals.Model.Simulation;

/// <summary>What an invented class does.</summary>
public sealed class SimulationPlan
{
    /// <summary>Most groups of one class.</summary>
    public const int MostGroups = 100_000;

    /// <summary>Plans a class.</summary>
    /// <param name="groups">How many groups, 1 to <see cref="MostGroups"/>.</param>
    /// <param name="balance">The balance that all use; null takes one of 0.01 g with the usual repeatability.</param>
    /// <param name="rounds">Rounds of heating, no more than the practical allows being done; 0 leaves it to the trade's rule: heat twice, and
    /// again while the last two weighings differ by more than the practical's tolerance.</param>
    /// <param name="cause">The one cause that counts in every group; null leaves it to chance.</param>
    /// <param name="sampleInGrams">Middle of the sample's mass, in g; null takes the practical's own. The groups' samples
    /// scatter about it by as many per cent as about their own middle.</param>
    /// <param name="notesObservations">Whether the groups note what they see.</param>
    /// <param name="arms">How the groups are divided among the practical's arms; null where all do it the ordinary way.</param>
    /// <param name="oneClass">Whether they share what a class shares; otherwise each group is of a class of its own.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public SimulationPlan(
        int groups,
        Balance? balance = null,
        int rounds = 0,
        string? cause = null,
        double? sampleInGrams = null,
        bool notesObservations = true,
        ArmDivision? arms = null,
        bool oneClass = true)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(groups, MostGroups);
        ArgumentOutOfRangeException.ThrowIfNegative(rounds);
        if (sampleInGrams is double sample && !(sample > 0 && double.IsFinite(sample)))
        {
            throw new ArgumentOutOfRangeException(nameof(sampleInGrams), sampleInGrams, "A sample weighs more than nothing.");
        }

        Groups = groups;
        Balance = balance ?? new Balance(0.01);
        Rounds = rounds;
        Cause = cause;
        SampleInGrams = sampleInGrams;
        NotesObservations = notesObservations;
        Arms = arms;
        OneClass = oneClass;
    }

    /// <summary>The same where every group does it in one way.</summary>
    public SimulationPlan OfOneWay() => new(Groups, Balance, Rounds, Cause, SampleInGrams, NotesObservations, null, OneClass);

    /// <summary>How many groups.</summary>
    public int Groups { get; }

    /// <summary>The balance that all use.</summary>
    public Balance Balance { get; }

    /// <summary>Rounds of heating; 0 for the trade's rule.</summary>
    public int Rounds { get; }

    /// <summary>Id of the one cause that counts in every group, or null.</summary>
    public string? Cause { get; }

    /// <summary>Middle of the sample's mass in g, or null for the practical's own.</summary>
    public double? SampleInGrams { get; }

    /// <summary>Whether the groups note what they see.</summary>
    public bool NotesObservations { get; }

    /// <summary>How the groups are divided among the practical's arms; null where all do it the ordinary way.</summary>
    public ArmDivision? Arms { get; }

    /// <summary>Whether the groups share what a class shares.</summary>
    public bool OneClass { get; }
}
