using System.CommandLine;
using Calx.App.Input;
using Calx.App.Output;
using Calx.App.Serving;

namespace Calx.App.Commands;

/// <summary><c>calx serve</c>: the pages for teacher and class.</summary>
internal static class ServeCommand
{
    private const int HighestPort = 65_535;

    public static Verb Create()
    {
        var data = new Option<string?>("--data") { Description = "folder for the records; otherwise 'calx' in your own data folder", HelpName = "DIR" };
        Option<long?> port = NumberOption.Whole("--port", "port to listen on; otherwise 8370 or the next that is free; 0 takes any", 0, HighestPort);
        var lan = new Option<bool>("--lan") { Description = "open to the room's network; the teacher then signs in with a passphrase" };
        var passphrase = new Option<string?>("--passphrase-file") { Description = "file whose first line becomes the teacher's passphrase", HelpName = "FILE" };
        var certificate = new Option<string?>("--certificate") { Description = "certificate for HTTPS: PFX without a password, or PEM", HelpName = "FILE" };
        var key = new Option<string?>("--certificate-key") { Description = "key of a PEM certificate", HelpName = "FILE" };
        var database = new Option<string?>("--database") { Description = "PostgreSQL instead of a file: file that holds the connection string", HelpName = "FILE" };
        var school = new Option<string?>("--school") { Description = "the school whose records these are, where several share a database", HelpName = "NAME" };
        var noBrowser = new Option<bool>("--no-browser") { Description = "open no browser" };
        var verb = new Verb(
            "serve",
            "Opens the pages for teacher and class: plans, classes, the lesson live, findings.",
            [
                new("calx serve", "on this machine alone, without phones: the teacher's laptop does the whole lesson"),
                new("calx serve --lan", "students' phones in the room can join; has you choose a passphrase the first time"),
            ],
            (result, surroundings) => Run(
                new ServeWords(
                    result.GetValue(data),
                    (int?)result.GetValue(port),
                    result.GetValue(lan),
                    result.GetValue(passphrase),
                    result.GetValue(certificate),
                    result.GetValue(key),
                    result.GetValue(database),
                    result.GetValue(school),
                    !result.GetValue(noBrowser)),
                surroundings),
            "Runs until Ctrl-C. The records are one file in the data folder. Without --lan no other device can reach it.");
        foreach (Option option in (Option[])[data, port, lan, passphrase, certificate, key, database, school, noBrowser])
        {
            verb.Options.Add(option);
        }

        return verb;
    }

    private static int Run(ServeWords words, Surroundings surroundings)
    {
        ServeOptions? options = words.Options(surroundings);
        return options is null ? ExitCode.BadInput : ServeSession.Run(options, words, surroundings).GetAwaiter().GetResult();
    }
}
