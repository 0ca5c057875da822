using Calx.App.Input;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Output;

/// <summary>The files that a simulation writes. Invented data never take the place of a file: it could be a class's own.</summary>
/// <param name="Csv">Where the class goes, or null.</param>
/// <param name="Truth">Where its truth goes, or null.</param>
internal sealed record SimulationFiles(string? Csv, string? Truth)
{
    /// <summary>Whether both names are free; else the fault is told on standard error.</summary>
    public bool AreNew(Surroundings surroundings)
    {
        if (Csv is not null && Truth is not null && surroundings.FullPath(Csv) == surroundings.FullPath(Truth))
        {
            surroundings.Error.WriteLine("calx simulate: --csv and --truth are one file; give each its own");
            return false;
        }

        foreach (string path in new[] { Csv, Truth }.OfType<string>())
        {
            if (File.Exists(surroundings.FullPath(path)))
            {
                surroundings.Error.WriteLine(Fault.Line(path, 1, 1, "there is such a file already, and invented data do not replace it; give another name"));
                return false;
            }
        }

        return true;
    }

    /// <summary>Writes both; tells a fault on standard error.</summary>
    public bool TryWrite(SimulatedClass drawn, Surroundings surroundings) =>
        TryWrite(Csv, () => SimulatedCsv.Readings(drawn), "The invented class is", surroundings)
        && TryWrite(Truth, () => SimulatedCsv.Truth(drawn), "What is true of it is", surroundings);

    private static bool TryWrite(string? path, Func<string> text, string what, Surroundings surroundings)
    {
        if (path is null)
        {
            return true;
        }

        try
        {
            NewFile.Create(surroundings.FullPath(path), text(), surroundings.Cancellation());
            surroundings.Error.WriteLine($"{what} in {path}");
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"it cannot be written there ({NewFile.ReasonOf(failure)})"));
            return false;
        }
    }
}
