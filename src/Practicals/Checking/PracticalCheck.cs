using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Definition.Source;
using Calx.Practicals.Model;

namespace Calx.Practicals.Checking;

/// <summary>
/// Everything that can be said of a practical's file before anybody tries it: the faults of its text, and what its own model says
/// of it. All of it at once: a fault in one section hides nothing in the others unless they rest on it.
/// </summary>
public static class PracticalCheck
{
    /// <summary>Checks the text of a file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">The file's name.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public static CheckedPractical Of(string text, string fileName, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(weights);
        PracticalReading reading = PracticalReader.Read(text, fileName);
        var found = new List<CheckFinding>();
        found.AddRange(reading.Faults.Select(f => CheckFinding.Of(CheckKind.Fault, f)));
        found.AddRange(reading.Warnings.Select(f => CheckFinding.Of(CheckKind.LookUp, f)));
        if (reading.Draft is not PracticalDraft draft)
        {
            return new CheckedPractical(null, found, [], isWhole: false);
        }

        return Across(reading.Practical, draft, found, weights);
    }

    private static CheckedPractical Across(Practical? practical, PracticalDraft draft, List<CheckFinding> found, AtomicWeights weights)
    {
        SoundSections sections = draft.Sections;
        var places = new FilePlaces(draft.Root);
        bool bench = sections.Are(FileSection.Bench, FileSection.Readings, FileSection.Procedure);
        bool model = bench && sections.Are(FileSection.Parameters, FileSection.Quantities);
        bool judged = model && sections.Are(FileSection.Findings, FileSection.Conclusions);
        bool whole = judged && sections.Are(FileSection.Faults, FileSection.Lesson);
        found.AddRange(IdCheck.Of(draft.Practical, places));
        if (sections.Are(FileSection.Readings))
        {
            found.AddRange(AliasCheck.Of(draft.Practical, places));
            found.AddRange(new UnitCheck(draft.Practical, places).OfReadings());
        }

        if (sections.Are(FileSection.Readings, FileSection.Quantities))
        {
            found.AddRange(new UnitCheck(draft.Practical, places).OfFormulas());
            found.AddRange(new UnitCheck(draft.Practical, places).OfNames());
        }

        if (bench)
        {
            found.AddRange(SealedCheck.Of(draft.Practical));
        }

        if (bench && sections.Are(FileSection.Parameters))
        {
            found.AddRange(new DrawCheck(draft.Practical, places).Findings(withFaults: sections.Are(FileSection.Faults)));
        }

        if (sections.Are(FileSection.Readings, FileSection.Lesson))
        {
            found.AddRange(StepCheck.Of(draft.Practical));
        }

        if (practical is not null)
        {
            found.AddRange(SampleCheck.Of(practical, weights, places));
        }

        if (!model)
        {
            return new CheckedPractical(practical, found, [], isWhole: false);
        }

        var run = new IdealRun(draft.Practical, weights);
        var ideal = new IdealCheck(draft.Practical, run, places, weights);
        found.AddRange(ideal.OfQuantities());
        found.AddRange(ideal.Knows(draft.Practical.Findings.Sample) && ideal.Knows(draft.Practical.Findings.Change) ? EnoughCheck.Of(draft.Practical, run, weights) : []);
        found.AddRange(judged ? ideal.OfConclusions() : []);
        return new CheckedPractical(practical, found, ideal.Values, whole);
    }
}
