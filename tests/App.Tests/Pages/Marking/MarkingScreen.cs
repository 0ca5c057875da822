using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Live;
using Calx.App.Tests.Pages.Teachers;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Marking;

/// <summary>The teacher's pages of marking for a lesson of class 9F of Larkmoor School: three students in two groups, with invented readings and answers.</summary>
internal sealed class MarkingScreen : IAsyncDisposable
{
    private MarkingScreen(Class9F one) => Class = one;

    /// <summary>The class, its lesson and its journal.</summary>
    public Class9F Class { get; }

    /// <summary>Address of the class view.</summary>
    public string Address => $"/lessons/{Class.Taught.Lesson.Id}/marking";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Starts with readings and no answers: group 1 has Ada and Bo, group 2 Cleo. 0.24 g of magnesium took up 0.16 g of oxygen in group 1, 0.27 g only 0.10 g in group 2.</summary>
    public static async Task<MarkingScreen> Start(bool assessed = false)
    {
        Class9F one = await Class9F.Start(assessed, "Ada", "Bo", "Cleo");
        foreach ((int member, int group) in ((int, int)[])[(1, 1), (2, 1), (3, 2)])
        {
            await one.Seat(member, group);
        }

        foreach ((int group, string what, string written) in ((int, string, string)[])
            [(1, "empty", "24.31"), (1, "before", "24.55"), (1, "after", "24.71"), (2, "empty", "25.02"), (2, "before", "25.29"), (2, "after", "25.39")])
        {
            await one.Read(group, what, written);
        }

        return new MarkingScreen(one);
    }

    /// <summary>The same with answers: Ada all right, Bo with the vessel not taken away, Cleo with one value and words.</summary>
    public static async Task<MarkingScreen> Answered(bool assessed = false)
    {
        MarkingScreen screen = await Start(assessed);
        foreach ((int member, string id, string text, string? unit) in ((int, string, string, string?)[])
        [
            (1, "massMagnesium", "0.24", "g"), (1, "massOxygen", "0.16", "g"), (1, "molesMagnesium", "0.00988", "mol"), (1, "molesOxygen", "0.0100", "mol"), (1, "ratio", "0.988", null),
            (2, "massMagnesium", "24.55", "g"), (3, "massMagnesium", "0.27", "g"),
            (1, "conserved", "The mass of the oxygen was there before. Nothing was made.", null),
            (3, "conserved", "It weighs more by human error.", null),
            (3, "better", "Use a balance with more decimals.", null),
        ])
        {
            await screen.Class.Answer(member, id, text, unit);
        }

        return screen;
    }

    /// <summary>A page below the class view, parsed; it must be there.</summary>
    public async Task<IDocument> Page(string place = "")
    {
        HttpResponseMessage answer = await Class.Teacher.GetAsync(place.StartsWith('/') && place.StartsWith("/lessons/", StringComparison.Ordinal) ? place : Address + place, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await TeachersScreen.Parsed(answer);
    }

    /// <summary>Sends a form of a page as a browser would, some of its fields filled in otherwise, and returns the answer.</summary>
    public Task<HttpResponseMessage> Post(IElement form, params (string Name, string Value)[] filled)
    {
        var fields = new List<KeyValuePair<string, string>>();
        foreach (IElement field in form.QuerySelectorAll("input, textarea, select"))
        {
            string name = field.GetAttribute("name")!;
            bool isLeftOut = field.GetAttribute("type") is "radio" or "checkbox" && !field.HasAttribute("checked");
            if (!isLeftOut && filled.All(f => f.Name != name))
            {
                string value = field.LocalName == "select" ? field.QuerySelector("option[selected]")?.GetAttribute("value") ?? "" : field.GetAttribute("value") ?? field.TextContent;
                fields.Add(KeyValuePair.Create(name, value));
            }
        }

        fields.AddRange(filled.Select(f => KeyValuePair.Create(f.Name, f.Value)));
        string address = form.GetAttribute("action")!;
        return Class.Teacher.PostAsync(address, new FormUrlEncodedContent(fields), Cancel);
    }

    /// <summary>Sends a form, and returns the page that it leads to or is answered with.</summary>
    public async Task<IDocument> Send(IElement form, params (string Name, string Value)[] filled)
    {
        HttpResponseMessage answer = await Post(form, filled);
        return answer.StatusCode == HttpStatusCode.Redirect ? await Page(answer.Headers.Location!.ToString()) : await TeachersScreen.Parsed(answer);
    }

    /// <summary>The form by which one answer is marked by hand.</summary>
    public static IElement Overrule(IDocument page, string answer) => page.QuerySelector($"form[action$='/{answer}']")!;

    /// <summary>The teacher's marks that stand in the journal.</summary>
    public async Task<IReadOnlyList<JournalEntry>> Marks() => [.. (await Class.Taught.Journal()).Where(e => e.Cell.What.StartsWith(Acts.MarkPrefix, StringComparison.Ordinal))];

    public ValueTask DisposeAsync() => Class.DisposeAsync();
}
