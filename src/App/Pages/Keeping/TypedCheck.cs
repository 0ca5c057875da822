using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Keeping;

/// <summary>A check of a balance as it was typed.</summary>
/// <param name="Weight">What stands on the weight.</param>
/// <param name="Shown">What the display showed.</param>
/// <param name="By">Who checked.</param>
/// <param name="Note">What else is to be said.</param>
public sealed record TypedCheck(string Weight, string Shown, string By, string Note)
{
    /// <summary>Reads a form.</summary>
    public static TypedCheck Of(FormFields form) => new(form["weight"], form["shown"], form["by"], form["note"]);

    /// <summary>The check, or why it is not taken.</summary>
    public (BalanceCheck? Check, string? Fault) Read(KeptBalance balance, DateTimeOffset now)
    {
        if (!WrittenNumber.TryParse(Weight, out WrittenNumber weight) || weight.Value < 0)
        {
            return (null, $"The weight '{Shorten(Weight)}' is not a mass in g such as 50.000 (write a full stop).");
        }

        if (!WrittenNumber.TryParse(Shown, out WrittenNumber shown))
        {
            return (null, $"The display '{Shorten(Shown)}' is not a number such as 50.01 (write a full stop).");
        }

        int decimals = WrittenNumber.TryParse(balance.Resolution, out WrittenNumber step) ? step.Decimals : 0;
        if (shown.Decimals != decimals)
        {
            return (null, string.Create(
                CultureInfo.InvariantCulture, $"Balance {balance.Letter} shows {decimals} decimals, and '{Shown}' has {shown.Decimals}. Type all that the display shows."));
        }

        return By.Length is 0 or > BalanceCheck.LongestText || Note.Length > BalanceCheck.LongestText
            ? (null, $"Initials of who checked are expected, and texts of at most {BalanceCheck.LongestText} characters.")
            : (new BalanceCheck(RecordId.Draw(), balance.Id, now, weight, shown, By, Note), null);
    }

    private static string Shorten(string text) => text.Length <= 20 ? text : text[..20] + "...";
}
