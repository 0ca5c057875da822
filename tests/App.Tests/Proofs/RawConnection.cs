using System.Globalization;
using System.Net.Sockets;
using System.Text;

namespace Calx.App.Tests.Proofs;

/// <summary>Sends bytes as they are, which no client library would, and reads how the answer begins.</summary>
internal static class RawConnection
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    /// <summary>The answer's status; null where the connection was closed without one, which is an answer too.</summary>
    /// <exception cref="TimeoutException">Neither came.</exception>
    public static async Task<int?> StatusOf(Uri address, byte[] request)
    {
        using var client = new TcpClient { NoDelay = true };
        using var patience = new CancellationTokenSource(Patience);
        try
        {
            await client.ConnectAsync(address.Host, address.Port, patience.Token);
            NetworkStream stream = client.GetStream();
            await stream.WriteAsync(request, patience.Token);
            // What was announced and does not come is not waited for.
            client.Client.Shutdown(SocketShutdown.Send);
            byte[] start = new byte[12];
            int read = await stream.ReadAtLeastAsync(start, start.Length, throwOnEndOfStream: false, patience.Token);
            string text = Encoding.ASCII.GetString(start, 0, read);
            return text.StartsWith("HTTP/1.", StringComparison.Ordinal) ? int.Parse(text[9..], CultureInfo.InvariantCulture) : null;
        }
        catch (Exception closed) when (closed is IOException or SocketException)
        {
            return null;
        }
        catch (OperationCanceledException)
        {
            throw new TimeoutException("There was no answer: " + Encoding.Latin1.GetString(request.AsSpan(0, Math.Min(400, request.Length))));
        }
    }
}
