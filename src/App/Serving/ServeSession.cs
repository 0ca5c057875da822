using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using Calx.App.Input;
using Calx.App.Output;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Serving;

/// <summary>One run of the web program, from opening the records to Ctrl-C.</summary>
public static class ServeSession
{
    private const int PortsTried = 20;

    /// <summary>Runs it and returns an exit code.</summary>
    /// <param name="options">How it serves.</param>
    /// <param name="words">What the command line said, for the passphrase and the browser.</param>
    /// <param name="surroundings">Where messages go.</param>
    /// <param name="clock">The time; null for the real one.</param>
    /// <param name="prepare">What is done with the open records first, and the page to open then; null for nothing.</param>
    public static async Task<int> Run(
        ServeOptions options,
        ServeWords words,
        Surroundings surroundings,
        TimeProvider? clock = null,
        Func<RecordStore, CancellationToken, Task<string>>? prepare = null)
    {
        CancellationToken cancellation = surroundings.Cancellation();
        try
        {
            Directory.CreateDirectory(options.DataFolder);
            await using RecordStore store = await RecordStore.Open(new StoreSettings(options.Connection, options.School), clock ?? TimeProvider.System, cancellation);
            if (options.OpenToRoom && !await PassphraseAsked.IsSet(store, words.PassphraseFile, surroundings, cancellation))
            {
                return ExitCode.BadInput;
            }

            string page = prepare is null ? "/" : await prepare(store, cancellation);
            await using WebApplication web = await Start(options, store, clock ?? TimeProvider.System, cancellation);
            Tell(web, options, words, page, surroundings);
            await Task.Delay(Timeout.Infinite, cancellation).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(3));
            await web.StopAsync(patience.Token);
            surroundings.Output.WriteLine("Stopped. Everything that was typed is in the records.");
            return ExitCode.Done;
        }
        catch (StoreUnavailableException trouble)
        {
            surroundings.Error.WriteLine($"calx serve: {trouble.Message}");
            return ExitCode.CannotWrite;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or SocketException or CryptographicException)
        {
            surroundings.Error.WriteLine($"calx serve: {Reason(failure, options)}");
            return ExitCode.CannotWrite;
        }
    }

    /// <summary>Builds the web program and makes it listen.</summary>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<WebApplication> Start(ServeOptions options, RecordStore store, TimeProvider clock, CancellationToken cancellation)
    {
        int port = options.MayTakeNextPort ? FreePort(options) : options.Port;
        WebApplication web = CalxHost.Build(options with { Port = port }, store, clock);
        await web.Services.GetRequiredService<TeachersKey>().Load(cancellation);
        await web.StartAsync(cancellation);
        return web;
    }

    /// <summary>Where it listens, by the port that it was given.</summary>
    public static Uri AddressOf(WebApplication web)
    {
        string address = web.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        return new Uri(address.Replace("0.0.0.0", "127.0.0.1", StringComparison.Ordinal));
    }

    private static void Tell(WebApplication web, ServeOptions options, ServeWords words, string page, Surroundings surroundings)
    {
        Uri address = AddressOf(web);
        surroundings.Output.WriteLine($"Calx is open at {address.GetLeftPart(UriPartial.Authority)}{page}");
        if (options.OpenToRoom)
        {
            foreach (string host in RoomAddresses.OfRoom())
            {
                surroundings.Output.WriteLine($"In the room: {address.Scheme}://{host}:{address.Port}/join");
            }
        }
        else if (!options.Invented)
        {
            surroundings.Output.WriteLine("On this machine only: students' phones cannot join. For a lesson with phones, end it and start: calx serve --lan");
        }

        surroundings.Output.WriteLine($"Records: {(options.Database is null ? options.Connection : "PostgreSQL")}");
        surroundings.Output.WriteLine("Ctrl-C ends it.");
        surroundings.Output.Flush();
        if (words.OpensBrowser)
        {
            Browser.TryOpen(new Uri(address, page));
        }
    }

    private static int FreePort(ServeOptions options)
    {
        for (int port = options.Port; port < options.Port + PortsTried; port++)
        {
            try
            {
                using var probe = new TcpListener(options.OpenToRoom ? IPAddress.Any : IPAddress.Loopback, port);
                probe.Start();
                return port;
            }
            catch (SocketException)
            {
                // Taken: the next.
            }
        }

        return 0;
    }

    private static string Reason(Exception failure, ServeOptions options) => failure switch
    {
        CryptographicException => $"{options.Certificate}: no certificate with its key that this program can use ({failure.Message})",
        IOException or SocketException when failure.Message.Contains("address", StringComparison.OrdinalIgnoreCase) =>
            $"port {options.Port} is taken; give another with --port, or none and a free one is found",
        _ => failure.Message,
    };
}
