using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>
/// Shortest ways between places in seconds at an ordinary pace of 1.3 m/s. Ground places are joined to their two neighbours along the
/// outline; other places by the book's legs.
/// </summary>
public sealed class WayTable
{
    /// <summary>Ordinary walking pace on ballast, m/s (common practice, no source).</summary>
    public const double OrdinaryPace = 1.3;

    private readonly double[,] _seconds;
    private readonly int[,] _next;

    public WayTable(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        Places = [.. book.PlacesInOrder];
        int n = Places.Length;
        _seconds = new double[n, n];
        _next = new int[n, n];
        for (int i = 0; i < n; i++)
        {
            for (int j = 0; j < n; j++)
            {
                (_seconds[i, j], _next[i, j]) = i == j ? (0, i) : (double.PositiveInfinity, -1);
            }
        }

        JoinGround(book);
        foreach (Leg leg in book.Legs)
        {
            Join(IndexOf(leg.From), IndexOf(leg.To), leg.Seconds);
        }

        Close(n);
    }

    public ImmutableArray<Place> Places { get; }

    public int IndexOf(string place)
    {
        for (int i = 0; i < Places.Length; i++)
        {
            if (Places[i].Name == place)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Seconds at the ordinary pace; infinite where there is no way.</summary>
    public double Seconds(int from, int to) => _seconds[from, to];

    /// <summary>The place after <paramref name="from"/> on the shortest way, or −1.</summary>
    public int Next(int from, int to) => _next[from, to];

    private void JoinGround(ClassBook book)
    {
        double halfLength = book.Length / 2;
        int[] around =
        [
            .. Enumerable.Range(0, Places.Length)
                .Where(i => Places[i].OnGround)
                .OrderBy(i => Math.Atan2(Places[i].Position.Y / (book.Width / 2), (Places[i].Position.X - halfLength) / halfLength))
                .ThenBy(i => i),
        ];
        for (int i = 0; i < around.Length && around.Length > 1; i++)
        {
            int a = around[i];
            int b = around[(i + 1) % around.Length];
            Point3 p = Places[a].Position;
            Point3 q = Places[b].Position;
            Join(a, b, (Math.Abs(p.X - q.X) + Math.Abs(p.Y - q.Y)) / OrdinaryPace);
        }
    }

    private void Join(int a, int b, double seconds)
    {
        if (a >= 0 && b >= 0 && a != b && seconds < _seconds[a, b])
        {
            (_seconds[a, b], _seconds[b, a]) = (seconds, seconds);
            (_next[a, b], _next[b, a]) = (b, a);
        }
    }

    private void Close(int n)
    {
        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                for (int j = 0; j < n; j++)
                {
                    if (_seconds[i, k] + _seconds[k, j] < _seconds[i, j])
                    {
                        _seconds[i, j] = _seconds[i, k] + _seconds[k, j];
                        _next[i, j] = _next[i, k];
                    }
                }
            }
        }
    }
}
