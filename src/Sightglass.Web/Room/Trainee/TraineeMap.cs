using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Sightglass.Book.Model;
using Sightglass.Drawing.Plate;
using Sightglass.Drawing.Walk;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;

namespace Sightglass.Web.Room.Trainee;

/// <summary>Ways and pictures of a machine that do not change, made when they are first asked for.</summary>
internal sealed class TraineeMap
{
    private static readonly ConditionalWeakTable<Plan, TraineeMap> s_known = [];

    private readonly Plan _plan;
    private readonly ImmutableArray<string> _ground;
    private readonly ConcurrentDictionary<(string Place, string Language, int Others, bool Still), Lazy<string>> _plates = new();

    private TraineeMap(Plan plan)
    {
        _plan = plan;
        WalkRoute route = WalkRoute.Of(plan.Book);
        _ground = [.. route.Stops.Where(s => s.Place.OnGround).Select(s => s.Place.Name)];
        Places = [.. route.Stops.Select(s => s.Place.Name)];
        RunsLeft = new WalkSides(plan.Book).RunsLeft;
    }

    /// <summary>All places in the order in which the machine is walked round.</summary>
    public ImmutableArray<string> Places { get; }

    /// <summary>Whether onward is to the left of the strip.</summary>
    public bool RunsLeft { get; }

    public static TraineeMap Of(Plan plan) => s_known.GetValue(plan, p => new(p));

    /// <summary>Names of what is within reach at a place, in the order of the page.</summary>
    public IEnumerable<Item> ItemsAt(string place) => PlaceView.Of(_plan, place).Items.Select(i => i.Item);

    /// <summary>The ground place before and after one on the way round; the way round has no end.</summary>
    public (string? Back, string? Onward) Beside(string place)
    {
        int at = _ground.IndexOf(place);
        return at < 0 || _ground.Length < 2 ? (null, null) : (_ground[(at + _ground.Length - 1) % _ground.Length], _ground[(at + 1) % _ground.Length]);
    }

    /// <summary>Places to which a way leads from here without passing another, with the seconds of this role.</summary>
    /// <param name="place">Here.</param>
    /// <param name="role">Who walks.</param>
    /// <param name="shut">Items that they know to be shut.</param>
    public IEnumerable<(string Place, double Seconds)> Joined(string place, Role role, ImmutableArray<string> shut) =>
        _plan.Ways.Of([.. shut]).JoinedTo(_plan.Ways.IndexOf(place)).Select(j => (_plan.Ways.Places[j.To].Name, j.Seconds * Pace(role)));

    /// <summary>Seconds of the shortest way.</summary>
    public double Seconds(string from, string to, Role role, ImmutableArray<string> shut) => _plan.Ways.Of([.. shut]).Seconds(_plan.Ways.IndexOf(from), _plan.Ways.IndexOf(to)) * Pace(role);

    /// <summary>The picture from a place; without marks for somebody on the way there.</summary>
    public string Plate(string place, int others, bool onTheWay) => _plates.GetOrAdd(
        (place, Basics.Language.Tongue.Spoken.Code, others, onTheWay),
        key => new(() => PlateDrawing.Render(_plan.Book, place, onTheWay ? [] : [.. ItemsAt(place).Select(i => i.Name)], others, new() { IdPrefix = "from-here-" }))).Value;

    private static double Pace(Role role) => WayTable.OrdinaryPace / role.WalkingSpeed;
}
