using System.Security.Cryptography;
using System.Text;
using Sightglass.Book.Changes;

namespace Sightglass.Web.Share;

/// <summary>
/// The seal of an address that was printed here, so that a phone opens the paper whose code it read and cannot ask for another one. Made with a key that stays in the data folder: what was printed
/// opens after the next start, too.
/// </summary>
/// <param name="key">Random bytes.</param>
internal sealed class PaperSeal(byte[] key)
{
    private const int KeyBytes = 32;

    /// <summary>What is kept of the code: 72 bits, in 12 letters.</summary>
    private const int SealBytes = 9;

    /// <param name="folder">Keeps the key; null to keep it nowhere.</param>
    public static PaperSeal Open(string? folder)
    {
        string? path = folder is null ? null : Path.Combine(folder, "papers.key");
        if (path is not null && File.Exists(path) && File.ReadAllBytes(path) is { Length: KeyBytes } kept)
        {
            return new(kept);
        }

        byte[] made = RandomNumberGenerator.GetBytes(KeyBytes);
        if (path is not null)
        {
            Directory.CreateDirectory(folder!);
            WholeFile.Write(path, made);
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            }
        }

        return new(made);
    }

    /// <param name="what">Which paper.</param>
    /// <param name="asks">What its address asks, in any order.</param>
    public string Of(string what, IEnumerable<KeyValuePair<string, string>> asks)
    {
        string said = string.Join('\n', asks.Select(a => $"{a.Key}={a.Value}").Order(StringComparer.Ordinal).Prepend(what));
        return Convert.ToBase64String(HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(said)).AsSpan(0, SealBytes)).Replace('+', '-').Replace('/', '_');
    }

    public bool Holds(string what, IEnumerable<KeyValuePair<string, string>> asks, string? seal) =>
        seal is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(Of(what, asks)), Encoding.UTF8.GetBytes(seal));
}
