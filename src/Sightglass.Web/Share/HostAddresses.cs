using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Sightglass.Web.Share;

/// <summary>Where others reach this computer.</summary>
internal static class HostAddresses
{
    /// <summary>Addresses of this computer by which others on its networks reach it.</summary>
    public static IEnumerable<IPAddress> Reached() => NetworkInterface.GetAllNetworkInterfaces()
        .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
        .SelectMany(n => n.GetIPProperties().UnicastAddresses)
        .Select(a => a.Address)
        .Where(a => a.AddressFamily == AddressFamily.InterNetwork || (a.AddressFamily == AddressFamily.InterNetworkV6 && a is { IsIPv6LinkLocal: false }));
}
