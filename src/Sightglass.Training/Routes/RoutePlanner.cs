using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Training.Routes;

/// <summary>Finds the walk for a request.</summary>
public static class RoutePlanner
{
    /// <param name="book">With the items of a road number or of a whole train, as wanted.</param>
    /// <param name="request">Whose names are the book's.</param>
    /// <returns>Null where the walk's ends cannot be reached from each other, or what is to be shown in order cannot be.</returns>
    public static RoutePlan? Plan(ClassBook book, RouteRequest request)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(request);
        WayTable ways = new(book);
        RouteMap map = new(ways, [.. request.Closed, .. BeyondRole(book, request.Role)]);
        int start = map.IndexOf(request.From ?? FirstPlace(book));
        int? end = request.To is { } to ? map.IndexOf(to) : null;
        if (start < 0 || map.IsClosed(start))
        {
            return null;
        }

        bool[] reached = Reached(map, start);
        List<Item> shown = [];
        List<ImmutableArray<int>> wanted = [];
        List<Item> leftOut = [];
        foreach (Item item in request.Items.Select(n => book.Items.GetValueOrDefault(n)).OfType<Item>())
        {
            ImmutableArray<int> places = [.. item.Places.Select(map.IndexOf).Where(p => p >= 0 && reached[p])];
            if (places.IsEmpty)
            {
                leftOut.Add(item);
                continue;
            }

            shown.Add(item);
            wanted.Add(places);
        }

        int[] inOrder = [.. request.InOrder.Select(n => shown.FindIndex(i => i.Name == n)).Where(i => i >= 0)];
        RouteProblem problem = new(map, start, end, [.. wanted], [.. inOrder.Zip(inOrder.Skip(1))]);
        return RouteSearch.Find(problem) is { } answer
            ? new(book, request, [.. Stops(book, request, map, answer, shown)], answer.Least * RouteRequest.OrdinaryPace / request.Pace, [.. leftOut.Where(i => !i.Places.IsEmpty)])
            : null;
    }

    /// <summary>Where the walk round the machine begins: the foremost place on the ground of the side on which it starts.</summary>
    private static string FirstPlace(ClassBook book)
    {
        double side = book.WalkStart == Side.Left ? -1 : 1;
        Place[] ground = [.. book.PlacesInOrder.Where(p => p.OnGround)];
        Place[] beside = [.. ground.Where(p => p.Position.Y * side > book.Width / 2)];
        return (beside.Length > 0 ? beside : ground.Length > 0 ? ground : [.. book.PlacesInOrder]).MinBy(p => p.Position.X)?.Name ?? "";
    }

    private static IEnumerable<string> BeyondRole(ClassBook book, string? role) =>
        role is not null && book.Roles.TryGetValue(role, out Role? known) && known.IsBound ? book.Places.Keys.Except(known.Reaches, StringComparer.Ordinal) : [];

    private static bool[] Reached(RouteMap map, int start)
    {
        bool[] reached = new bool[map.Places.Length];
        Stack<int> open = new([start]);
        reached[start] = true;
        while (open.TryPop(out int here))
        {
            foreach ((int to, _) in map.JoinedTo(here))
            {
                if (!reached[to])
                {
                    reached[to] = true;
                    open.Push(to);
                }
            }
        }

        return reached;
    }

    private static IEnumerable<RouteStop> Stops(ClassBook book, RouteRequest request, RouteMap map, FoundRoute answer, List<Item> shown)
    {
        (double seconds, double metres) = (0, 0);
        List<string> passed = [];
        for (int i = 0; i < answer.Steps.Length; i++)
        {
            RouteStep step = answer.Steps[i];
            Place place = map.Places[step.Place];
            seconds += step.Seconds * RouteRequest.OrdinaryPace / request.Pace;
            metres += step.Metres;
            if (step.Shown.IsEmpty && i > 0 && i < answer.Steps.Length - 1)
            {
                passed.Add(place.Name);
                continue;
            }

            ImmutableArray<Item> items = [.. step.Shown.Select(n => shown[n])];
            Hazard[] there = [.. book.HazardsInOrder.Where(h => h.Places.Contains(place.Name) || (h.OnTouch && items.Any(t => h.Items.Contains(t.Name))))];
            yield return new(
                place,
                seconds,
                metres,
                [.. passed],
                items,
                [.. there.Where(h => !h.OnTouch)],
                [.. there.Where(h => h.OnTouch && items.Any(t => h.Items.Contains(t.Name)))]);
            (seconds, metres) = (0, 0);
            passed.Clear();
        }
    }
}
