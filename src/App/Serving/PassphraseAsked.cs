using Calx.App.Output;
using Calx.Records.Storage;

namespace Calx.App.Serving;

/// <summary>Sees that a passphrase is set before the program opens to the room: from a file, or chosen on the terminal the first time.</summary>
public static class PassphraseAsked
{
    /// <summary>Whether one is set now; where not, it has said what to do.</summary>
    public static async Task<bool> IsSet(RecordStore store, string? file, Surroundings surroundings, CancellationToken cancellation)
    {
        var key = new TeachersKey(store, openToRoom: true);
        await key.Load(cancellation);
        if (file is null && key.IsSet)
        {
            return true;
        }

        if (file is null && !surroundings.HasPerson)
        {
            surroundings.Error.WriteLine("calx serve: --lan needs a passphrase for the teacher; there is no terminal to ask on, so give one with --passphrase-file FILE");
            return false;
        }

        string? given = file is not null
            ? FirstLine(surroundings.FullPath(file)) : PassphraseChoice.Ask(surroundings.AskUnseen, surroundings.Error.WriteLine);
        if (given is null)
        {
            return false;
        }

        if (Passphrase.Fault(given) is string fault)
        {
            surroundings.Error.WriteLine($"calx serve: {file}: {fault}");
            return false;
        }

        if (!key.IsSet || !key.Opens(given))
        {
            await key.Set(given, cancellation);
        }

        return true;
    }

    private static string FirstLine(string path) => File.ReadLines(path).FirstOrDefault()?.Trim() ?? "";
}
