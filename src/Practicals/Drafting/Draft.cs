namespace Calx.Practicals.Drafting;

/// <summary>
/// A practical's file drafted from the answers to a few plain questions: complete, with comments for whoever edits it. What the answers
/// do not tell, such as hazards, is left out on purpose, so that a check of the file asks for it; nothing is invented.
/// </summary>
public sealed class Draft
{
    private Draft(IReadOnlyList<DraftQuestion> questions, IReadOnlyDictionary<string, string> faults, string? id, string? text)
    {
        Questions = questions;
        Faults = faults;
        Id = id;
        Text = text;
    }

    /// <summary>The questions that were to be answered, each with what is taken for it where the other answers are these.</summary>
    public IReadOnlyList<DraftQuestion> Questions { get; }

    /// <summary>What is wrong with an answer, by the question's key; empty where a file was written.</summary>
    public IReadOnlyDictionary<string, string> Faults { get; }

    /// <summary>The practical's id, or null where there are faults.</summary>
    public string? Id { get; }

    /// <summary>The file's text, or null where there are faults.</summary>
    public string? Text { get; }

    /// <summary>Drafts a file.</summary>
    /// <param name="answers">Answers by the question's key; what is missing or empty takes its default.</param>
    public static Draft Of(IReadOnlyDictionary<string, string> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        string? happens = answers.TryGetValue(DraftQuestions.Happens, out string? said) ? said : null;
        DraftFamily? family = DraftQuestions.FamilyOf(happens);
        IReadOnlyList<DraftQuestion> questions = DraftQuestions.Of(family ?? DraftFamily.Heated);
        var words = new DraftWords(questions, answers);
        if (family is null)
        {
            words.Fault(DraftQuestions.Happens, $"'{happens}' is not understood; expected {string.Join(", ", questions[0].Choices.Select(c => c.Word))}");
        }

        foreach (string unknown in answers.Keys.Where(k => family is not null && questions.All(q => q.Key != k) && answers[k].Length > 0 && !IsOfOthers(k)))
        {
            words.Fault(unknown, $"there is no question '{unknown}'; expected {string.Join(", ", questions.Select(q => q.Key))}");
        }

        DraftPlan? plan = family is DraftFamily known ? DraftPlan.Of(known, words) : null;
        return plan is null || words.Faults.Count > 0
            ? new Draft(words.Questions, words.Faults, null, null)
            : new Draft(words.Questions, words.Faults, plan.Id, DraftFile.Of(plan));
    }

    /// <summary>A question of another family is passed over: a form may still hold its answer.</summary>
    private static bool IsOfOthers(string key) =>
        Enum.GetValues<DraftFamily>().Any(f => DraftQuestions.Of(f).Any(q => q.Key == key));
}
