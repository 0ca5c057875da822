using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>What probably happened in each group of a class, first by itself, then in the light of the others.</summary>
internal sealed class ClassDiagnosis
{
    private readonly Practical practical;
    private readonly ClassReadings readings;
    private readonly AtomicWeights weights;
    private readonly CauseModel model;
    private readonly Classmates classmates;
    private readonly IReadOnlyList<ConstantMass?> constantMass;
    private readonly GroupDiagnosis[] groups;

    /// <summary>Works out every group. Groups do not depend on each other, so any number of threads gives the same. A
    /// group's posterior is large and is let go at once; where a shared cause shows, it is worked out once more.</summary>
    public ClassDiagnosis(
        Practical practical,
        ClassReadings readings,
        AtomicWeights weights,
        AnalysisOptions options,
        Arm? arm,
        IReadOnlyList<ConstantMass?> constantMass)
    {
        this.practical = practical;
        this.readings = readings;
        this.weights = weights;
        this.constantMass = constantMass;
        model = new CauseModel(new Circumstances(practical, options.Conditions).InArm(arm), weights, options.Language);
        classmates = model.ClassmatesOf(readings.Groups);
        groups = new GroupDiagnosis[readings.Groups.Count];
        double[][] atWork = new double[groups.Length][];
        Parallel.For(0, groups.Length, i => atWork[i] = Diagnose(i, []));
        Shared = SharedCauseSearch.Of(model.Hidden, atWork, [.. readings.Groups.Select(g => g.Remarks.Balance)], options.Language);
        if (Shared.Count > 0)
        {
            Parallel.For(0, groups.Length, i => Diagnose(i, [.. Shared.Where(s => Concerns(s, i))]));
        }
    }

    /// <summary>Causes that befell most groups at once.</summary>
    public IReadOnlyList<SharedCause> Shared { get; }

    /// <summary>Each group, in the order of the class.</summary>
    public IReadOnlyList<GroupDiagnosis> Groups => groups;

    private bool Concerns(SharedCause shared, int group) =>
        shared.Balance is null || readings.Groups[group].Remarks.Balance == shared.Balance;

    private double[] Diagnose(int group, IReadOnlyList<SharedCause> shared)
    {
        CausePosterior posterior = model.Of(readings.Groups[group], readings.Balance, classmates);
        foreach (SharedCause cause in shared)
        {
            posterior = posterior.InClassSharing(practical.Faults.Select((f, i) => (f.Cause, i)).First(f => f.Cause == cause.Cause).i);
        }

        groups[group] = Diagnosis.Of(posterior, constantMass[group], weights);
        return posterior.AtWork();
    }
}
