using Calx.App.Output;
using Calx.App.Serving;

namespace Calx.App.Input;

/// <summary>What the command line says of serving.</summary>
public sealed record ServeWords(
    string? Data,
    int? Port,
    bool OpenToRoom,
    string? PassphraseFile,
    string? Certificate,
    string? CertificateKey,
    string? DatabaseFile,
    string? School,
    bool OpensBrowser)
{
    private const int LongestSchool = 60;

    /// <summary>The options, or null after telling each fault on standard error.</summary>
    /// <param name="surroundings">Where the faults go.</param>
    /// <param name="command">The command that they are told by.</param>
    public ServeOptions? Options(Surroundings surroundings, string command = "serve")
    {
        var faults = new List<string>();
        foreach ((string option, string? file) in (ReadOnlySpan<(string, string?)>)[
            ("--passphrase-file", PassphraseFile), ("--certificate", Certificate), ("--certificate-key", CertificateKey), ("--database", DatabaseFile)])
        {
            if (file is not null && !File.Exists(surroundings.FullPath(file)))
            {
                faults.Add($"{option}: there is no file {file}");
            }
        }

        if (CertificateKey is not null && Certificate is null)
        {
            faults.Add("--certificate-key: a key without --certificate is of no use");
        }

        if (School is { Length: 0 or > LongestSchool })
        {
            faults.Add($"--school: a name of 1 to {LongestSchool} characters is expected");
        }

        foreach (string fault in faults)
        {
            surroundings.Error.WriteLine($"calx {command}: {fault}");
        }

        return faults.Count > 0 ? null : new ServeOptions(surroundings.DataFolder(Data), Connection(surroundings), School ?? "school")
        {
            Port = Port ?? ServeOptions.UsualPort,
            MayTakeNextPort = Port is null,
            OpenToRoom = OpenToRoom,
            Certificate = Certificate is null ? null : surroundings.FullPath(Certificate),
            CertificateKey = CertificateKey is null ? null : surroundings.FullPath(CertificateKey),
        };
    }

    /// <summary>From a file: a connection string holds a password, which does not belong on a command line.</summary>
    private string? Connection(Surroundings surroundings) =>
        DatabaseFile is null ? null : File.ReadAllText(surroundings.FullPath(DatabaseFile)).Trim();
}
