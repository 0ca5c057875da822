namespace Calx.Practicals.Drafting;

/// <summary>Writes a draft's file, section by section.</summary>
internal static class DraftFile
{
    public static string Of(DraftPlan plan)
    {
        var text = new DraftText();
        text.Add($$"""
            # Drafted from a few answers. Everything here can be edited; 'calx practicals check' tells what does not fit, each with its
            # line. docs/methods/practical-file.md tells what each key means. Masses in g, times in min. Numbers with 'standing:
            # judgement' are guesses to begin with: put your own experience in their place.
            practical: {{plan.Id}}
            version: 1          # goes up with every change of amount, step or formula
            title: {{DraftText.Quoted(plan.Title)}}
            question: {{DraftText.Quoted(plan.Question)}}
            """);
        DraftBench.Write(text, plan);
        DraftCourse.Write(text, plan);
        DraftAsked.Write(text, plan);
        DraftCauses.Write(text, plan);
        DraftLesson.Write(text, plan);
        DraftSheet.Write(text, plan);
        return text.ToString();
    }
}
