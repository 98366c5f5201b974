using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Training.Routes;

/// <summary>Where a group can walk: the ways of a machine without the places that are closed to it.</summary>
public sealed class RouteMap
{
    private readonly WayTable _ways;
    private readonly bool[] _closed;

    /// <param name="ways">All ways, at the ordinary pace.</param>
    /// <param name="closed">Names of places at which nobody of the group may be.</param>
    public RouteMap(WayTable ways, IEnumerable<string> closed)
    {
        ArgumentNullException.ThrowIfNull(ways);
        ArgumentNullException.ThrowIfNull(closed);
        _ways = ways;
        _closed = new bool[ways.Places.Length];
        foreach (int place in closed.Select(ways.IndexOf).Where(i => i >= 0))
        {
            _closed[place] = true;
        }
    }

    public ImmutableArray<Place> Places => _ways.Places;

    /// <summary>The number of a place, or −1.</summary>
    public int IndexOf(string place) => _ways.IndexOf(place);

    public bool IsClosed(int place) => _closed[place];

    /// <summary>Whether nobody goes on from there who has not stopped there.</summary>
    public bool OnlyEndsAt(int place) => _ways.OnlyEndsAt(place);

    public bool IsDangerous(int place) => _ways.IsDangerous(place);

    /// <summary>The places that are joined to one and are not closed, with seconds at the ordinary pace.</summary>
    public IEnumerable<(int To, double Seconds)> JoinedTo(int place) => _ways.JoinedTo(place).Where(j => !_closed[j.To]);

    /// <summary>Metres between two joined places, along the axes on the ground and straight elsewhere.</summary>
    public double Metres(int from, int to)
    {
        (Point3 a, Point3 b) = (Places[from].Position, Places[to].Position);
        (double x, double y, double z) = (Math.Abs(a.X - b.X), Math.Abs(a.Y - b.Y), Math.Abs(a.Z - b.Z));
        return Places[from].OnGround && Places[to].OnGround ? x + y : Math.Sqrt((x * x) + (y * y) + (z * z));
    }
}
