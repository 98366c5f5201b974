using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Sightglass.Web.Share;

/// <summary>
/// Which phones may hand in. A code of eight digits pairs one phone, once, within half an hour; five wrong tries in a minute and nobody is heard until the minute is over, and
/// after five wrong tries the code is another one. Of a paired phone only the hash of its secret is kept.
/// </summary>
public sealed class Pairing
{
    private const int Tries = 5;
    private static readonly TimeSpan s_window = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan s_life = TimeSpan.FromMinutes(30);

    private readonly Lock _one = new();
    private readonly string? _file;
    private readonly TimeProvider _clock;
    private readonly HashSet<string> _phones = new(StringComparer.Ordinal);
    private readonly Queue<DateTimeOffset> _wrong = new();
    private DateTimeOffset _made;
    private int _wrongForCode;

    /// <param name="file">Keeps the hashes; null to forget phones when the program ends.</param>
    /// <param name="clock">The clock on the wall.</param>
    public Pairing(string? file, TimeProvider clock)
    {
        ArgumentNullException.ThrowIfNull(clock);
        (_file, _clock) = (file, clock);
        if (file is not null && File.Exists(file))
        {
            _phones.UnionWith(File.ReadAllLines(file).Where(l => l.Length == 64));
        }

        Code = New();
    }

    /// <summary>Eight digits.</summary>
    public string Code { get; private set; }

    /// <summary>Told when the code is another one.</summary>
    public event Action? Changed;

    public int Phones
    {
        get
        {
            lock (_one)
            {
                return _phones.Count;
            }
        }
    }

    /// <summary>Tries a code.</summary>
    public PairAnswer Try(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        PairAnswer answer;
        lock (_one)
        {
            DateTimeOffset now = _clock.GetUtcNow();
            while (_wrong.TryPeek(out DateTimeOffset first) && now - first >= s_window)
            {
                _wrong.Dequeue();
            }

            if (_wrong.Count >= Tries)
            {
                return new(null, MustWait: true);
            }

            bool right = now - _made < s_life
                && CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(Code), Encoding.UTF8.GetBytes(new string([.. code.Where(char.IsAsciiDigit)])));
            if (!right)
            {
                _wrong.Enqueue(now);
                if (++_wrongForCode < Tries && now - _made < s_life)
                {
                    return new(null, MustWait: false);
                }
            }

            answer = new(right ? Added() : null, MustWait: false);
            Code = New();
        }

        Changed?.Invoke();
        return answer;
    }

    public bool IsPaired(string? token)
    {
        lock (_one)
        {
            return token is { Length: > 0 and < 200 } && _phones.Contains(HashOf(token));
        }
    }

    private string New()
    {
        (_made, _wrongForCode) = (_clock.GetUtcNow(), 0);
        return RandomNumberGenerator.GetInt32(100_000_000).ToString("D8", CultureInfo.InvariantCulture);
    }

    private string Added()
    {
        string token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(32));
        _phones.Add(HashOf(token));
        if (_file is not null)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(_file)!);
            Book.Changes.WholeFile.Write(_file, Encoding.ASCII.GetBytes(string.Join('\n', _phones) + "\n"));
        }

        return token;
    }

    private static string HashOf(string token) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(token)));
}
