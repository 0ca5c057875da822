namespace Calx.App.Serving;

/// <summary>Lets the teacher choose a passphrase on the terminal: it does not show, so it is typed twice.</summary>
public static class PassphraseChoice
{
    /// <summary>Who has not managed by then is not helped by being asked again.</summary>
    private const int Tries = 3;

    /// <summary>Asks until two agree and the rule is kept; null where that did not come about, and then says so.</summary>
    /// <param name="ask">Asks a question and returns what was typed unseen; null where nobody answers.</param>
    /// <param name="tell">Says a sentence.</param>
    public static string? Ask(Func<string, string?> ask, Action<string> tell)
    {
        tell("With --lan this program opens to the room. Choose a passphrase for the teacher's pages: you sign in with it, and pupils must not know it.");
        tell($"At least {Passphrase.Shortest} characters; a few words are easy to keep in mind. It does not show while you type.");
        for (int left = Tries; left > 0; left--)
        {
            if (ask("New passphrase: ") is not string first)
            {
                return null;
            }

            string? fault = Passphrase.Fault(first) ?? (ask("The same again: ") == first ? null : "The two do not agree.");
            if (fault is null)
            {
                tell("The passphrase is set. Change it under 'This room' in the program.");
                return first;
            }

            tell($"{fault} {(left > 1 ? "Try again." : "No passphrase was set, and nothing was opened. Start again, or give one with --passphrase-file FILE.")}");
        }

        return null;
    }
}
