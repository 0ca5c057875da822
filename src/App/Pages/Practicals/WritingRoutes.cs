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

        return Pages.Show.Page<WritingPage>(OfAnswers(answers, "", "", context.RequestAborted));
    }

    private static async Task<IResult> Drafted(HttpContext context)
    {
        WritingSent sent = await WritingSent.Of(context);
        return Pages.Show.Page<WritingPage>(
            sent.Fields.Has("look") ? OfText(null, sent.Answers, sent.Text, null, sent.Fields.Has("tries"), context.RequestAborted) with { Written = sent.Written }
            : OfAnswers(sent.Answers, sent.Text, sent.Written, context.RequestAborted));
    }

    private static async Task<IResult> DraftPart(HttpContext context)
    {
        WritingSent sent = await WritingSent.Of(context);
        return Pages.Show.Page<WritingParts>(OfAnswers(sent.Answers, sent.Text, sent.Written, context.RequestAborted));
    }

    private static async Task<IResult> LookPart(HttpContext context)
    {
        WritingSent sent = await WritingSent.Of(context);
        return Pages.Show.Page<WritingSeen>(WritingPreview.Of(sent.Text, sent.Fields.IsTicked("tries"), context.RequestAborted));
    }

    /// <summary>The student's sheet of the file as it stands, as it prints.</summary>
    private static async Task<IResult> Sheet(HttpContext context, PlanDesk desk)
    {
        WritingSent sent = await WritingSent.Of(context);
        PracticalReading reading = PracticalReader.Read(sent.Text, "file");
        if (reading.Practical is not Practical practical || PlanForm.Of(practical, "") is not { Choice: { } choice } form)
        {
            return Pages.Show.Page<WritingPage>(OfText(null, null, sent.Text, "There is no sheet yet: the file has faults.", false, context.RequestAborted));
        }

        var setting = new PaperSetting(await desk.Of(form, withWays: false, context.RequestAborted), PaperOccasion.Unsaid, null, isChecked: false);
        PaperSet papers = PaperSet.Of(setting, [PaperKind.Student], [SupportLevel.Standard], choice.Stock);
        return WholeFile.Page(context, PaperHtml.Of(papers.Documents[0]));
    }

    /// <summary>A file that answers wrote is saved as they stand now; one that a person changed, as it stands.</summary>
    private static async Task<IResult> Save(HttpContext context, Shelf shelf)
    {
        WritingSent sent = await WritingSent.Of(context);
        string? id = sent.Fields["id"] is { Length: > 0 } said && shelf.IsOwn(said) ? said : null;
        if (id is null && !sent.IsByHand)
        {
            var draft = Draft.Of(sent.Answers);
            if (draft.Text is not string now)
            {
                return Unsaved(shelf, null, sent, $"Not saved: an answer is to be put right. {Faulty(draft)}", context);
            }

            sent = sent with { Text = now, Written = WritingSent.MarkOf(now) };
        }

        return shelf.Versions.Save(sent.Text, id, context.RequestAborted) switch
        {
            SaveResult.Saved saved => Pages.Show.See($"/practicals/{saved.Id}/edit?saved={saved.Version.ToString(CultureInfo.InvariantCulture)}"),
            SaveResult.Refused refused => Unsaved(shelf, id, sent, refused.Reason, context),
            _ => throw new InvalidOperationException("No other case of saving exists."),
        };
    }

    private static IResult Unsaved(Shelf shelf, string? id, WritingSent sent, string reason, HttpContext context)
    {
        WritingModel model = OfText(id, id is null ? sent.Answers : null, sent.Text, reason, false, context.RequestAborted);
        return Pages.Show.Page<WritingPage>(model with { Versions = VersionsOf(shelf, id), Written = sent.Written }, StatusCodes.Status400BadRequest);
    }

    private static string Faulty(Draft draft) => string.Join(
        " ", draft.Faults.Select(f => $"{draft.Questions.FirstOrDefault(q => q.Key == f.Key)?.Ask.TrimEnd('?') ?? f.Key}: {f.Value.TrimEnd('.')}."));

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
    private static WritingModel OfAnswers(IReadOnlyDictionary<string, string> answers, string text, string written, CancellationToken cancellation)
    {
        var draft = Draft.Of(answers);
        string now = draft.Text ?? text;
        return new WritingModel(null, answers, draft, now, WritingPreview.Of(now, false, cancellation), [], null, null) { Written = draft.Text is null ? written : WritingSent.MarkOf(now) };
    }

    private static WritingModel OfText(
        string? id, IReadOnlyDictionary<string, string>? answers, string text, string? fault, bool tries, CancellationToken cancellation) =>
        new(id, answers, answers is null ? null : Draft.Of(answers), text, WritingPreview.Of(text, tries, cancellation), [], null, fault);
}
