using Calx.Practicals.Inference;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>The sentences of advice. Those for students have no digits, no causes, no accepted values.</summary>
internal sealed class AdviceWords(EngineLanguage language)
{
    /// <summary>Those that have no cases.</summary>
    public AdviceTexts Texts { get; } = new(language);

    public string StopForStudents { get; } = new StudentTexts(language).Stop;

    public string Stop(IReadOnlyList<string> noted) => Texts.Noted(new Wording(language).LongList(noted));

    public string StopHere(NoMoreHeating why) => why switch
    {
        NoMoreHeating.NoTime => Texts.NoTime,
        NoMoreHeating.MostHeatings => Texts.NonePlanned,
        _ => Texts.TeacherDecides,
    };

    /// <summary>Why not again, and what the result then says.</summary>
    /// <param name="why">Why not again.</param>
    /// <param name="lastHeatingStartsBy">The call that has passed, where it has.</param>
    /// <param name="rule">What the last two weighings say.</param>
    public string StopHereForTeacher(NoMoreHeating why, double? lastHeatingStartsBy, ConstantMass? rule)
    {
        string first = why switch
        {
            NoMoreHeating.NoTime => Texts.WorthButNoTime(lastHeatingStartsBy?.InFigures("F0") ?? string.Empty),
            NoMoreHeating.MostHeatings => Texts.WorthButNonePlanned,
            _ => Texts.WorthButTeacher,
        };
        bool reacts = rule?.Reacts ?? true;
        string second = rule?.UnreactedAtMost is double most
            ? reacts ? Texts.StopUnreacted(ConstantMass.Percent(most)) : Texts.StopUndried(ConstantMass.Percent(most))
            : reacts ? Texts.StopUnsaid : Texts.StopUndriedUnsaid;
        return $"{first} {second}";
    }
}
