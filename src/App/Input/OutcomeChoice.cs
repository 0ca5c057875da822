using System.Globalization;
using Calx.App.Output;
using Calx.Chemistry.Elements;
using Calx.Papers.Handouts;
using Calx.Practicals.Clock;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>A class's file for the papers that come after the lesson, read and analysed as <c>calx analyse</c> does it.</summary>
internal static class OutcomeChoice
{
    /// <summary>More cells that cannot be taken are only counted.</summary>
    private const int MostRejectedTold = 20;

    /// <summary>What the class found, or null after telling the fault of the file on standard error.</summary>
    /// <param name="file">Path of the file.</param>
    /// <param name="plan">The lesson: its practical, and its balances.</param>
    /// <param name="words">What was said of the lesson, among it of the balances and of the class.</param>
    /// <param name="accepted">Whether the sheet for the wall tells the accepted value.</param>
    /// <param name="surroundings">Where faults are told.</param>
    public static ClassOutcome? Of(string file, PlanSettings plan, PlanWords words, bool accepted, Surroundings surroundings)
    {
        // A resolution that nobody gave is seen in the readings; the plan's usual one is no statement about them.
        decimal? step = words.Resolutions.Count > 0 ? (decimal)plan.Balances.Max(b => b.ResolutionInGrams) : null;
        if (ClassFile.Read(file, plan.Practical, new BalanceOptions(step, words.Repeatability), surroundings) is not ClassReadings readings)
        {
            return null;
        }

        foreach (RejectedCell cell in readings.Rejected.Take(MostRejectedTold))
        {
            surroundings.Error.WriteLine(ClassFile.RejectedLine(file, cell));
        }

        if (readings.Rejected.Count > MostRejectedTold)
        {
            surroundings.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{file}: {readings.Rejected.Count - MostRejectedTold} more cells could not be taken; 'calx analyse' names them"));
        }

        var options = new AnalysisOptions(Causes: true, words.Conditions);
        return new ClassOutcome(ClassAnalysis.Of(plan.Practical, readings, AtomicWeights.Iupac2024, options), ShowsAccepted: accepted);
    }
}
