using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Calx.App.Serving;

/// <summary>The names and numbers by which this machine is reached.</summary>
public static class RoomAddresses
{
    private static readonly string[] Own = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Addresses on the room's network, the likeliest first: not this machine's own, not those that a machine gives
    /// itself where no network gave it one.</summary>
    public static IReadOnlyList<string> OfRoom() =>
    [
        .. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .OrderByDescending(n => n.GetIPProperties().GatewayAddresses.Count)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IPAddress.IsLoopback(a) && !IsSelfGiven(a))
            .Select(a => a.ToString())
            .Distinct(),
    ];

    /// <summary>Every host name that a request may ask for.</summary>
    public static IReadOnlyCollection<string> All(bool openToRoom) => openToRoom
        ? [.. Own, Environment.MachineName, $"{Environment.MachineName}.local", .. OfRoom()]
        : Own;

    private static bool IsSelfGiven(IPAddress address) => address.GetAddressBytes() is [169, 254, ..];
}
