using System.Collections.Concurrent;
using System.Collections.Frozen;
using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Book.Walking;

namespace Sightglass.Plant.Plans;

/// <summary>
/// Shortest ways between places in seconds at an ordinary pace of 1.3 m/s, by <see cref="GroundWays"/> and the book's legs, among those that pass the fewest places which are
/// dangerous in themselves. Those from a place are worked out when first asked for (Dijkstra's algorithm), since a long train has a thousand places and nobody walks
/// between all of them. For several threads at once.
/// </summary>
public sealed class WayTable
{
    /// <summary>Ordinary walking pace on ballast, m/s (common practice, no source).</summary>
    public const double OrdinaryPace = 1.3;

    private readonly FrozenDictionary<string, int> _numbers;
    private readonly Lazy<WayMap> _map;
    private readonly Row?[] _rows;
    private readonly bool[] _dangerous;
    private readonly ClassBook _book;
    private readonly WayTable _whole;

    /// <summary>Items that are known to be shut, and the tables without the ways that go by them; kept by the table of all ways, so that one set is worked out once.</summary>
    private readonly ImmutableSortedSet<string> _shut = [];
    private readonly ConcurrentDictionary<string, WayTable> _without = new(StringComparer.Ordinal);

    /// <summary>By what is found shut, or mended, from here: nothing is made for who finds out what somebody found out before.</summary>
    private readonly ConcurrentDictionary<string, WayTable> _less = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, WayTable> _more = new(StringComparer.Ordinal);

    public WayTable(ClassBook book)
        : this(book, null, [])
    {
    }

    private WayTable(ClassBook book, WayTable? whole, ImmutableSortedSet<string> shut)
    {
        ArgumentNullException.ThrowIfNull(book);
        (_book, _whole, _shut) = (book, whole ?? this, shut);
        GoesByItems = book.Legs.Any(l => !l.Through.IsEmpty);
        Places = [.. book.PlacesInOrder];
        _numbers = Places.Select((p, i) => (p.Name, i)).ToFrozenDictionary(p => p.Name, p => p.i, StringComparer.Ordinal);
        _map = new(() => Map(book));
        _rows = new Row?[Places.Length];
        _dangerous = new bool[Places.Length];
        foreach (int place in book.Hazards.Values.Where(h => h.IsStanding).SelectMany(h => h.Places).Select(IndexOf).Where(i => i >= 0))
        {
            _dangerous[place] = true;
        }
    }

    public ImmutableArray<Place> Places { get; }

    /// <summary>Whether any way goes by an item.</summary>
    public bool GoesByItems { get; }

    /// <summary>Items that are taken to be shut, by name.</summary>
    public ImmutableSortedSet<string> Shut => _shut;

    /// <summary>The ways that are left when nobody gets by an item.</summary>
    public WayTable Without(string item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return _less.TryGetValue(item, out WayTable? known) ? known : (_less[item] = Of(_shut.Add(item)));
    }

    /// <summary>The ways when people get by an item again.</summary>
    public WayTable With(string item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return _more.TryGetValue(item, out WayTable? known) ? known : (_more[item] = Of(_shut.Remove(item)));
    }

    /// <summary>The ways that are left when nobody gets by some items.</summary>
    public WayTable Of(ImmutableSortedSet<string> shut)
    {
        ArgumentNullException.ThrowIfNull(shut);
        return shut.SetEquals(_shut) ? this : shut.IsEmpty ? _whole : _whole._without.GetOrAdd(string.Join('\n', shut), _ => new(_book, _whole, shut));
    }

    /// <summary>What the way between two places that are joined goes by: items by name, none on most ways.</summary>
    public ImmutableArray<string> Through(int from, int to) => _map.Value.Through.GetValueOrDefault((Math.Min(from, to), Math.Max(from, to)), []);

    /// <summary>The number of a place, or −1.</summary>
    public int IndexOf(string place) => _numbers.GetValueOrDefault(place, -1);

    /// <summary>Seconds at the ordinary pace; infinite where there is no way. The same in both directions.</summary>
    public double Seconds(int from, int to) => From(Math.Min(from, to)).Seconds[Math.Max(from, to)];

    /// <summary>The place after <paramref name="from"/> on the shortest way, or −1.</summary>
    public int Next(int from, int to) => From(to).Before[from];

    /// <summary>The places that are joined to one, with the seconds to each at the ordinary pace.</summary>
    public IReadOnlyList<(int To, double Seconds)> JoinedTo(int place) => _map.Value.Joined[place];

    /// <summary>Whether a way can only begin or end there: between two vehicles.</summary>
    public bool OnlyEndsAt(int place) => _map.Value.Dead[place];

    /// <summary>Whether a place is dangerous in itself, so that nobody passes there who can go round.</summary>
    public bool IsDangerous(int place) => _dangerous[place];

    private WayMap Map(ClassBook book)
    {
        Dictionary<(int, int), (double Seconds, ImmutableArray<string> Through)> fastest = [];
        List<(int To, double Seconds)>[] joined = [.. Places.Select(_ => new List<(int, double)>())];
        bool[] dead = new bool[Places.Length];
        GroundWays ground = new(book, Places);
        foreach ((int a, int b, double metres) in ground.Joints)
        {
            Join(joined, a, b, metres / OrdinaryPace);
            Note(a, b, metres / OrdinaryPace, []);
        }

        foreach (Leg leg in book.Legs.Where(l => _shut.IsEmpty || !l.Through.Any(_shut.Contains)))
        {
            Join(joined, IndexOf(leg.From), IndexOf(leg.To), leg.Seconds);
            Note(IndexOf(leg.From), IndexOf(leg.To), leg.Seconds, leg.Through);
        }

        foreach (int within in ground.Within)
        {
            dead[within] = true;
        }

        return new(joined, dead, fastest.Where(f => !f.Value.Through.IsEmpty).ToFrozenDictionary(f => f.Key, f => f.Value.Through));

        void Note(int a, int b, double seconds, ImmutableArray<string> through)
        {
            (int, int) pair = (Math.Min(a, b), Math.Max(a, b));
            if (!fastest.TryGetValue(pair, out var known) || seconds < known.Seconds)
            {
                fastest[pair] = (seconds, through);
            }
        }
    }

    private static void Join(List<(int To, double Seconds)>[] joined, int a, int b, double seconds)
    {
        if (a >= 0 && b >= 0 && a != b)
        {
            joined[a].Add((b, seconds));
            joined[b].Add((a, seconds));
        }
    }

    /// <summary>Two threads may work out the same row: both come to the same.</summary>
    private Row From(int place) => Volatile.Read(ref _rows[place]) ?? (_rows[place] = WorkOut(place));

    private Row WorkOut(int start)
    {
        (List<(int To, double Seconds)>[] joined, bool[] dead, _) = _map.Value;
        Row row = new(Places.Length);
        (row.Dangers[start], row.Seconds[start], row.Before[start]) = (0, 0, start);
        PriorityQueue<int, (int Dangers, double Seconds, int Place)> open = new();
        open.Enqueue(start, (0, 0, start));
        while (open.TryDequeue(out int here, out (int Dangers, double Seconds, int Place) reached))
        {
            if (row.IsBetter(here, reached.Dangers, reached.Seconds) || (dead[here] && here != start))
            {
                continue;
            }

            int dangers = reached.Dangers + (_dangerous[here] && here != start ? 1 : 0);
            foreach ((int there, double seconds) in joined[here])
            {
                double sum = reached.Seconds + seconds;
                if (row.IsWorse(there, dangers, sum))
                {
                    (row.Dangers[there], row.Seconds[there], row.Before[there]) = (dangers, sum, here);
                    open.Enqueue(there, (dangers, sum, there));
                }
            }
        }

        return row;
    }

    /// <param name="Joined">What each place is joined to.</param>
    /// <param name="Dead">At which places a way can only begin or end.</param>
    /// <param name="Through">What the fastest way between two joined places goes by, the smaller number first.</param>
    private sealed record WayMap(List<(int To, double Seconds)>[] Joined, bool[] Dead, FrozenDictionary<(int, int), ImmutableArray<string>> Through);

    /// <summary>The ways from one place: dangers passed and seconds to each, and the place before it on the way.</summary>
    private sealed class Row
    {
        public Row(int places)
        {
            (Dangers, Seconds, Before) = (new int[places], new double[places], new int[places]);
            Array.Fill(Dangers, int.MaxValue);
            Array.Fill(Seconds, double.PositiveInfinity);
            Array.Fill(Before, -1);
        }

        public int[] Dangers { get; }

        public double[] Seconds { get; }

        public int[] Before { get; }

        /// <summary>Whether the way known so far is worse than another one.</summary>
        public bool IsWorse(int place, int dangers, double seconds) => (Dangers[place], Seconds[place]).CompareTo((dangers, seconds)) > 0;

        /// <summary>Whether the way known so far is better than another one.</summary>
        public bool IsBetter(int place, int dangers, double seconds) => (Dangers[place], Seconds[place]).CompareTo((dangers, seconds)) < 0;
    }
}
