using System.Text.RegularExpressions;

namespace Calx.Browser.Tests.Everywhere;

/// <summary>The addresses of all pages of the teacher's, in a lab over the demo's records.</summary>
internal static partial class EveryPage
{
    /// <summary>Of the teacher's; a page that is reached only from a list is found there.</summary>
    public static async Task<IReadOnlyList<string>> OfTeacher(IPage page, string lesson)
    {
        string schoolClass = await First(page, "/classes", ClassAddress());
        string balance = await First(page, "/balances", BalanceAddress());
        return
        [
            "/", "/lessons", "/lessons/new", "/lessons/new?practical=magnesium-oxide", "/practicals", "/practicals/new", "/practicals/magnesium-oxide",
            "/practicals/magnesium-oxide?minutes=40&groups=15", "/practicals/magnesium-oxide/print", "/practicals/magnesium-oxide/papers", "/practicals/magnesium-oxide/history", "/practicals/magnesium-oxide/learned", "/classes",
            schoolClass, $"{schoolClass}/forget", "/balances", balance, "/records", "/room", "/room/note", "/room/hello", "/sign-in", "/week", "/week?from=2026-01-01", lesson,
            $"{lesson}/door", $"{lesson}/live", $"{lesson}/groups/7", $"{lesson}/groups/10", $"{lesson}/groups/7/cells/1/before", $"{lesson}/grid",
            $"{lesson}/projector", $"{lesson}/slips", $"{lesson}/papers", $"{lesson}/papers/class-report.html", $"{lesson}/papers/wall-display.html", $"{lesson}/findings", $"{lesson}/findings?all=yes",
            $"{lesson}/marking", $"{lesson}/marking/students", $"{lesson}/marking/students/1", $"{lesson}/marking/words", $"{lesson}/marking/comments", $"{lesson}/marking/look", $"{lesson}/marking/settings",
            $"{lesson}/delete", "/nowhere",
        ];
    }

    private static async Task<string> First(IPage page, string list, Regex address)
    {
        await page.GotoAsync(list);
        return address.Match(await page.ContentAsync()).Groups[1].Value;
    }

    [GeneratedRegex("href=\"(/classes/[0-9a-z]{12})\"")]
    private static partial Regex ClassAddress();

    [GeneratedRegex("href=\"(/balances/[0-9a-z]{12})\"")]
    private static partial Regex BalanceAddress();
}
