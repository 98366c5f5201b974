using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using Sightglass.Book.Changes;

namespace Sightglass.Web.Share;

/// <summary>
/// The certificate under which phones reach this computer: made here, its key kept beside the data and never sent. A phone trusts it when its owner has compared the
/// fingerprint and installed it; for that it has to be an authority (RFC 5280, section 4.2.1.9), and phones refuse one that is valid for longer than 825 days.
/// </summary>
internal static class ShareCertificate
{
    private const int Days = 800;
    private const int RenewBefore = 30;

    /// <summary>The one in a folder, or a new one where there is none, it runs out, or this computer has another address by now.</summary>
    /// <param name="folder">Null to keep it nowhere.</param>
    /// <param name="addresses">Where this computer is reached.</param>
    /// <param name="now">By the clock on the wall.</param>
    public static X509Certificate2 Open(string? folder, IReadOnlyCollection<IPAddress> addresses, DateTimeOffset now)
    {
        string? path = folder is null ? null : Path.Combine(folder, "certificate.pfx");
        if (path is not null && Kept(path) is { } kept && kept.NotAfter > now.AddDays(RenewBefore).LocalDateTime && Names(kept).IsSupersetOf(addresses))
        {
            return kept;
        }

        byte[] made = Make(addresses, now);
        if (path is not null)
        {
            Directory.CreateDirectory(folder!);
            WholeFile.Write(path, made);
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }
        }

        return Load(made);
    }

    /// <summary>SHA-256 of the certificate in pairs of digits, to be compared by eye.</summary>
    public static string Fingerprint(X509Certificate2 certificate) =>
        string.Join(' ', SHA256.HashData(certificate.RawData).Select(b => b.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)));

    private static X509Certificate2? Kept(string path)
    {
        try
        {
            return File.Exists(path) ? Load(File.ReadAllBytes(path)) : null;
        }
        catch (CryptographicException)
        {
            return null; // damaged: a new one is made, and phones are asked to trust it again
        }
    }

    private static X509Certificate2 Load(byte[] file) => X509CertificateLoader.LoadPkcs12(file, null);

    private static byte[] Make(IReadOnlyCollection<IPAddress> addresses, DateTimeOffset now)
    {
        using ECDsa key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        CertificateRequest request = new($"CN=Sightglass on {Dns.GetHostName()}", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(certificateAuthority: true, hasPathLengthConstraint: true, pathLengthConstraint: 0, critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature | X509KeyUsageFlags.KeyCertSign, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], critical: false));
        SubjectAlternativeNameBuilder names = new();
        names.AddDnsName(Dns.GetHostName());
        foreach (IPAddress address in addresses)
        {
            names.AddIpAddress(address);
        }

        request.CertificateExtensions.Add(names.Build());
        using X509Certificate2 certificate = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(Days));
        return certificate.Export(X509ContentType.Pfx);
    }

    private static HashSet<IPAddress> Names(X509Certificate2 certificate) =>
        [.. certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>().SelectMany(e => e.EnumerateIPAddresses())];
}
