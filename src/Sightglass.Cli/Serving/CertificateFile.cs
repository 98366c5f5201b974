using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Sightglass.Cli.Serving;

/// <summary>A certificate with its key, as a file.</summary>
internal static class CertificateFile
{
    /// <param name="path">A <c>.pfx</c> without password, or a <c>.pem</c> that holds both.</param>
    /// <param name="why">What is wrong with it; empty where nothing is.</param>
    public static X509Certificate2? Read(string path, out string why)
    {
        why = "";
        try
        {
            X509Certificate2 read = Path.GetExtension(path).Equals(".pem", StringComparison.OrdinalIgnoreCase)
                ? X509Certificate2.CreateFromPemFile(path)
                : X509CertificateLoader.LoadPkcs12FromFile(path, null);
            if (read.HasPrivateKey)
            {
                return read;
            }

            read.Dispose();
            why = $"{path} holds no key. It wants the certificate and its key in one file.";
        }
        catch (Exception e) when (e is CryptographicException or IOException or UnauthorizedAccessException)
        {
            why = $"{path} cannot be used as a certificate: {e.Message} It wants a .pfx without password, or a .pem with the certificate and its key.";
        }

        return null;
    }
}
