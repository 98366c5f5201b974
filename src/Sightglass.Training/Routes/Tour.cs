using System.Collections.Immutable;

namespace Sightglass.Training.Routes;

/// <summary>An order in which groups of things are shown, each from one of its places, that is made shorter move by move.</summary>
internal sealed class Tour
{
    /// <summary>A move must gain more than rounding can.</summary>
    private const double LeastGain = 1e-9;

    private readonly RouteProblem _problem;
    private readonly RouteGroups _groups;
    private readonly RouteClosure _closure;
    private readonly List<(int Group, int Place)> _stops = [];

    public Tour(RouteProblem problem, RouteGroups groups, RouteClosure closure)
    {
        (_problem, _groups, _closure) = (problem, groups, closure);
    }

    public IReadOnlyList<(int Group, int Place)> Stops => _stops;

    /// <summary>Infinite where some group cannot be reached.</summary>
    public double Cost
    {
        get
        {
            double cost = 0;
            for (int i = 0; i <= _stops.Count; i++)
            {
                cost += Between(PlaceAt(i - 1), i < _stops.Count ? _stops[i].Place : _problem.End);
            }

            return cost + _stops.Sum(s => Weight(s.Place));
        }
    }

    public void Take(IReadOnlyList<(int Group, int Place)> stops)
    {
        _stops.Clear();
        _stops.AddRange(stops);
    }

    public (int Group, int Place) RemoveAt(int index)
    {
        (int, int) stop = _stops[index];
        _stops.RemoveAt(index);
        return stop;
    }

    /// <summary>Puts a group that is not in it where it costs least, by whichever of its places.</summary>
    public void Insert(int group)
    {
        (int at, int place, _) = Cheapest(group);
        _stops.Insert(at, (group, place));
    }

    /// <summary>Moves groups and turns stretches round until neither makes it shorter.</summary>
    public void Improve()
    {
        for (bool better = true; better;)
        {
            better = false;
            for (int i = 0; i < _stops.Count; i++)
            {
                better |= Relocate(i);
            }

            better |= TurnStretches();
        }
    }

    private bool Relocate(int index)
    {
        (int group, int place) = _stops[index];
        double gain = Between(PlaceAt(index - 1), place) + Between(place, PlaceAfter(index)) - Between(PlaceAt(index - 1), PlaceAfter(index)) + Weight(place);
        _stops.RemoveAt(index);
        (int at, int chosen, double cost) = Cheapest(group);
        bool better = cost < gain - LeastGain;
        _stops.Insert(better ? at : index, (group, better ? chosen : place));
        return better;
    }

    private (int At, int Place, double Cost) Cheapest(int group)
    {
        (int from, int to) = Room(group);
        (int At, int Place, double Cost) best = (from, _groups.Places[group][0], double.PositiveInfinity);
        foreach (int place in _groups.Places[group])
        {
            for (int i = from; i <= to; i++)
            {
                int? after = i < _stops.Count ? _stops[i].Place : _problem.End;
                double cost = Between(PlaceAt(i - 1), place) + Between(place, after) - Between(PlaceAt(i - 1), after) + Weight(place);
                if (cost < best.Cost - LeastGain)
                {
                    best = (i, place, cost);
                }
            }
        }

        return best;
    }

    /// <summary>Between which positions a group that is not in it keeps its order.</summary>
    private (int From, int To) Room(int group)
    {
        (int from, int to) = (0, _stops.Count);
        foreach ((int first, int then) in _groups.Order)
        {
            if (then == group && _stops.FindIndex(s => s.Group == first) is >= 0 and var f)
            {
                from = Math.Max(from, f + 1);
            }
            else if (first == group && _stops.FindIndex(s => s.Group == then) is >= 0 and var t)
            {
                to = Math.Min(to, t);
            }
        }

        return (from, Math.Max(from, to));
    }

    private bool TurnStretches()
    {
        bool better = false;
        for (int i = 0; i < _stops.Count; i++)
        {
            for (int j = i + 1; j < _stops.Count; j++)
            {
                double now = Between(PlaceAt(i - 1), _stops[i].Place) + Between(_stops[j].Place, PlaceAfter(j));
                double then = Between(PlaceAt(i - 1), _stops[j].Place) + Between(_stops[i].Place, PlaceAfter(j));
                if (then < now - LeastGain && MayTurn(i, j))
                {
                    _stops.Reverse(i, j - i + 1);
                    better = true;
                }
            }
        }

        return better;
    }

    private bool MayTurn(int from, int to)
    {
        foreach ((int first, int then) in _groups.Order)
        {
            if (Within(first) && Within(then))
            {
                return false;
            }
        }

        return true;

        bool Within(int group) => _stops.FindIndex(from, to - from + 1, s => s.Group == group) >= 0;
    }

    private int PlaceAt(int index) => index < 0 ? _problem.Start : _stops[index].Place;

    private int? PlaceAfter(int index) => index + 1 < _stops.Count ? _stops[index + 1].Place : _problem.End;

    private double Between(int from, int? to) => to is { } there ? _closure.Cost(from, there) : 0;

    private double Weight(int place) => _problem.Map.IsDangerous(place) ? RouteClosure.Danger : 0;
}
