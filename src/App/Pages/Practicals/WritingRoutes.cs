using System.Globalization;
using Calx.App.Own;
using Calx.Papers.Documents.Html;
using Calx.Papers.Handouts;
using Calx.Practicals.Definition;
using Calx.Practicals.Drafting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Practicals;

/// <summary>Writing a practical of one's own, and editing it. No version is lost, and no lesson is changed by it.</summary>
public static class WritingRoutes
{
    private const string Answered = "answer.";

    /// <summary>Characters of a practical's file; those of the program have 20 to 40 thousand.</summary>
    private const int LongestFile = 400_000;

    public static void Map(RouteGroupBuilder practicals)
    {
        practicals.MapGet("/new", (string? happens, HttpContext context) => New(happens, context));
        // As delegates: a method of one context alone would be taken for one that writes its answer itself.
        practicals.MapPost("/new", (Delegate)Drafted);
        practicals.MapPost("/new/draft", (Delegate)DraftPart);
        practicals.MapPost("/new/look", (Delegate)LookPart);
        practicals.MapPost("/new/sheet", Sheet);
        practicals.MapPost("/new/save", Save);
        practicals.MapGet("/{id}/edit", Edit);
    }

    private static IResult New(string? happens, HttpContext context)
    {
        var answers = new Dictionary<string, string>(StringComparer.Ordinal);
        if (DraftQuestions.FamilyOf(happens) is not null && happens is not null)
        {
            answers[DraftQuestions.Happens] = happens;
        }

        return Pages.Show.Page<WritingPage>(OfAnswers(answers, "", context.RequestAborted));
    }

    private static async Task<IResult> Drafted(HttpContext context)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        return Pages.Show.Page<WritingPage>(
            fields.Has("look") ? OfText(null, Answers(fields), TextOf(fields), null, fields.Has("tries"), context.RequestAborted)
            : OfAnswers(Answers(fields), TextOf(fields), context.RequestAborted));
    }

    private static async Task<IResult> DraftPart(HttpContext context)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        return Pages.Show.Page<WritingParts>(OfAnswers(Answers(fields), TextOf(fields), context.RequestAborted));
    }

    private static async Task<IResult> LookPart(HttpContext context)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        return Pages.Show.Page<WritingSeen>(WritingPreview.Of(TextOf(fields), fields.IsTicked("tries"), context.RequestAborted));
    }

    /// <summary>The student's sheet of the file as it stands, as it prints.</summary>
    private static async Task<IResult> Sheet(HttpContext context, PlanDesk desk)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        PracticalReading reading = PracticalReader.Read(TextOf(fields), "file");
        if (reading.Practical is not Practical practical || PlanForm.Of(practical, "") is not { Choice: { } choice } form)
        {
            return Pages.Show.Page<WritingPage>(OfText(null, null, TextOf(fields), "There is no sheet yet: the file has faults.", false, context.RequestAborted));
        }

        var setting = new PaperSetting(await desk.Of(form, withWays: false, context.RequestAborted), PaperOccasion.Unsaid, null, isChecked: false);
        PaperSet papers = PaperSet.Of(setting, [PaperKind.Student], [SupportLevel.Standard], choice.Stock);
        return WholeFile.Page(context, PaperHtml.Of(papers.Documents[0]));
    }

    private static async Task<IResult> Save(HttpContext context, Shelf shelf)
    {
        FormFields fields = await FormFields.Of(context, LongestFile);
        switch (shelf.Versions.Save(TextOf(fields), context.RequestAborted))
        {
            case SaveResult.Saved saved:
                return Pages.Show.See($"/practicals/{saved.Id}/edit?saved={saved.Version.ToString(CultureInfo.InvariantCulture)}");
            case SaveResult.Refused refused:
                string? id = fields["id"] is { Length: > 0 } said && shelf.IsOwn(said) ? said : null;
                WritingModel model = OfText(id, id is null ? Answers(fields) : null, TextOf(fields), refused.Reason, false, context.RequestAborted);
                return Pages.Show.Page<WritingPage>(model with { Versions = VersionsOf(shelf, id) }, StatusCodes.Status400BadRequest);
            default:
                throw new InvalidOperationException("No other case of saving exists.");
        }
    }

    private static IResult Edit(string id, int? version, int? saved, HttpContext context, Shelf shelf)
    {
        if (!shelf.IsOwn(id) || shelf.Versions.Text(id, version) is not string text)
        {
            return Pages.Show.Nothing("practical");
        }

        WritingModel model = OfText(id, null, text, null, false, context.RequestAborted);
        return Pages.Show.Page<WritingPage>(model with { Versions = VersionsOf(shelf, id), Shown = version, Saved = saved });
    }

    private static IReadOnlyList<int> VersionsOf(Shelf shelf, string? id) => id is null ? [] : [.. shelf.Versions.Earlier(id).Select(v => v.Number).Distinct()];

    /// <summary>Where an answer has a fault, the file stays as it was.</summary>
    private static WritingModel OfAnswers(IReadOnlyDictionary<string, string> answers, string text, CancellationToken cancellation)
    {
        var draft = Draft.Of(answers);
        string now = draft.Text ?? text;
        return new WritingModel(null, answers, draft, now, WritingPreview.Of(now, false, cancellation), [], null, null);
    }

    private static WritingModel OfText(
        string? id, IReadOnlyDictionary<string, string>? answers, string text, string? fault, bool tries, CancellationToken cancellation) =>
        new(id, answers, answers is null ? null : Draft.Of(answers), text, WritingPreview.Of(text, tries, cancellation), [], null, fault);

    private static Dictionary<string, string> Answers(FormFields fields) =>
        Enum.GetValues<DraftFamily>().SelectMany(DraftQuestions.Of).Select(q => q.Key).Distinct()
            .Where(key => fields.Has(Answered + key)).ToDictionary(key => key, key => fields[Answered + key], StringComparer.Ordinal);

    /// <summary>A form's lines end as those of a browser do; a file's do not.</summary>
    private static string TextOf(FormFields fields) => fields["text"].ReplaceLineEndings("\n") is { Length: > 0 } text ? text + "\n" : "";
}
