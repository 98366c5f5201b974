using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography.X509Certificates;

namespace Sightglass.Web.Share;

/// <summary>What phones on the same network reach: certificate, pairing, the seal of papers, and where. The pages themselves stay on this computer.</summary>
public sealed class Sharing : IDisposable
{
    private readonly IPAddress[] _addresses = [.. HostAddresses.Reached()];

    private Sharing(string? folder, TimeProvider clock)
    {
        Certificate = ShareCertificate.Open(folder, _addresses, clock.GetUtcNow());
        Seal = PaperSeal.Open(folder);
        Pairing = new(folder is null ? null : Path.Combine(folder, "phones.txt"), clock);
    }

    public X509Certificate2 Certificate { get; }

    public Pairing Pairing { get; }

    /// <summary>Of the papers that a phone may open.</summary>
    internal PaperSeal Seal { get; }

    /// <summary>To be compared by eye.</summary>
    public string Fingerprint => ShareCertificate.Fingerprint(Certificate);

    /// <summary>The first address at which a phone reaches this computer; its port is known once it listens.</summary>
    public Uri? Address { get; internal set; }

    /// <summary>What a phone opens to be paired: the code is in it.</summary>
    public Uri? PairAddress => Address is null ? null : new(Address, $"pair?code={Pairing.Code}");

    /// <summary>Where anybody in the room says what they think of a bet.</summary>
    public Uri? AnswerAddress => Address is null ? null : new(Address, Bets.AnswerPage.Root);

    /// <param name="folder">Keeps the certificate and the phones; null to keep nothing.</param>
    /// <param name="clock">The clock on the wall.</param>
    public static Sharing Open(string? folder, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        return new(folder, clock);
    }

    public void Dispose() => Certificate.Dispose();

    internal void Listens(int port)
    {
        IPAddress first = _addresses.FirstOrDefault(a => a.AddressFamily == AddressFamily.InterNetwork) ?? _addresses.FirstOrDefault() ?? IPAddress.Loopback;
        Address = new UriBuilder("https", first.ToString(), port, "/walkdown/").Uri;
    }
}
