using Calx.App.Input;
using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking;

namespace Calx.App.Pages.Marking;

/// <summary>Reads the form of how a lesson is marked.</summary>
public static class MarkingSettingsForm
{
    /// <summary>What was set; what a form does not say, or says in words that it does not have, is as usual.</summary>
    /// <param name="form">The form.</param>
    /// <param name="practical">The lesson's practical.</param>
    public static MarkingSettings Read(FormFields form, Practical practical)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(practical);
        string[] all = [.. practical.AllAnswers.Select(a => a.Id), .. practical.Sheet.Questions.Select(q => q.Id)];
        string[] asked = [.. all.Where(form.All("asked").Contains)];
        return MarkingSettings.Usual with
        {
            Asked = asked.Length == all.Length ? null : asked,
            Weights = AtomicWeightChoice.Named(form["weights"]) is null ? AtomicWeightChoice.School : form["weights"],
            EarlyRounding = form["early"] == "one-off" ? EarlyRounding.OneMarkOff : EarlyRounding.Accept,
            Figures = form.IsTicked("figures"),
            Units = form["units"] switch { "asked" => UnitsRule.Asked, "free" => UnitsRule.Free, _ => UnitsRule.WrongOnes },
            Feedback = form["feedback"] switch { "at-once" => FeedbackTime.AtOnce, "never" => FeedbackTime.Never, _ => FeedbackTime.Later },
        };
    }

    /// <summary>What cannot be kept, or null.</summary>
    public static string? Fault(MarkingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return settings.Asked is { Count: 0 } ? "Nothing was kept: ask at least one answer." : null;
    }
}
