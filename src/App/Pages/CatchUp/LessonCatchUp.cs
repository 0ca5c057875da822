using System.Text;
using Calx.App.Commands;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Pages.Lessons;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Handouts.CatchUp;
using Calx.Practicals.CatchUp;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.CatchUp;

/// <summary>The papers of the packs that a lesson keeps.</summary>
internal static class LessonCatchUp
{
    /// <summary>The file of what is true of each pack.</summary>
    public const string TruthFile = "catch-up-truth.json";

    /// <summary>The sheets, then the key, each with whose it is; empty where no pack was made.</summary>
    public static IReadOnlyList<(string Whose, Paper Paper)> Papers(LessonModel model, PaperSetting setting, HttpContext context)
    {
        IReadOnlyList<CatchUpPack> packs = CatchUpDesk.Kept(model);
        if (packs.Count == 0)
        {
            return [];
        }

        var own = new CatchUpSetting(model.View.Room.Plan, setting.Occasion, Level(context), setting.Look, setting.IsChecked);
        return [.. CatchUpPapers.Of(own, packs).Zip([.. packs.Select(p => p.Student.Name), "Key, for you alone"], (paper, whose) => (whose, paper))];
    }

    /// <summary>What the page shows of them.</summary>
    public static CatchUpModel Model(LessonModel model, PaperSetting setting, HttpContext context) => new(
        $"/lessons/{model.Lesson.Id}",
        new WorkWords(model.View.Practical),
        Papers(model, setting, context),
        CatchUpDesk.Waiting(model),
        Level(context).ToString().ToLowerInvariant(),
        context.Request.Query["fault"] is [{ Length: > 0 } fault, ..] ? fault : null);

    /// <summary>What is true of each pack, as a document; null where no pack was made.</summary>
    public static byte[]? Truth(LessonModel model, PaperSetting setting, HttpContext context)
    {
        IReadOnlyList<CatchUpPack> packs = CatchUpDesk.Kept(model);
        if (packs.Count == 0)
        {
            return null;
        }

        using var text = new StringWriter();
        JsonAnswer.Print(text, json => CatchUpJson.Write(json, new CatchUpAnswer(model.View.Room.Plan, null, null, Level(context), setting.Occasion, packs)));
        return Encoding.UTF8.GetBytes(text.ToString().ReplaceLineEndings("\n"));
    }

    private static SupportLevel Level(HttpContext context) =>
        Enum.TryParse(context.Request.Query["help"], ignoreCase: true, out SupportLevel level) && Enum.IsDefined(level) ? level : SupportLevel.Standard;
}
