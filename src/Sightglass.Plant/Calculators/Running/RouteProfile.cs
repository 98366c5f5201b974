using System.Collections.Immutable;

namespace Sightglass.Plant.Calculators.Running;

/// <summary>A route as a train of some length feels it: grades and curves as the mean over its length, limits as the least of all that lies under it. Before its start the route goes on level and straight.</summary>
internal sealed class RouteProfile
{
    private readonly ImmutableArray<RouteStretch> _stretches;
    private readonly double[] _starts;
    private readonly double[] _heights;
    private readonly double[] _turns;
    private readonly double _train;
    private readonly double? _end;

    /// <param name="stretches">One after the other.</param>
    /// <param name="train">m of its length.</param>
    /// <param name="end">m at which its head is to stand; the end of the route where absent.</param>
    public RouteProfile(ImmutableArray<RouteStretch> stretches, double train, double? end = null)
    {
        (_stretches, _train, _end) = (stretches, train, end);
        (_starts, _heights, _turns) = (new double[stretches.Length + 1], new double[stretches.Length + 1], new double[stretches.Length + 1]);
        for (int i = 0; i < stretches.Length; i++)
        {
            RouteStretch s = stretches[i];
            _starts[i + 1] = _starts[i] + s.Length;
            _heights[i + 1] = _heights[i] + (s.Length * TrackResistance.GradeShare(s.Grade));
            _turns[i + 1] = _turns[i] + (s.Length * TrackResistance.GradeOfCurve(s.CurveDegrees));
        }
    }

    /// <summary>m from the start of the route to where it is to stand.</summary>
    public double Length => _end ?? _starts[^1];

    /// <summary>Force along the rail for each unit of weight: of grades, and of curves by the rule.</summary>
    public (double Grade, double Curve) ShareAt(double head) => (Mean(_heights, head), Mean(_turns, head));

    public RouteStretch At(double head) => _stretches[IndexOf(head)];

    /// <summary>m/s that all under the train allows.</summary>
    public double LimitAt(double head)
    {
        double least = double.PositiveInfinity;
        for (int i = IndexOf(head); i >= 0 && (_starts[i + 1] > head - _train || i == IndexOf(head)); i--)
        {
            least = Math.Min(least, _stretches[i].Limit);
        }

        return least;
    }

    /// <summary>Limits that come before the end, and the stand at the end.</summary>
    public IEnumerable<(double At, double Speed)> Ahead(double head) =>
        Enumerable.Range(0, _stretches.Length).Where(i => _starts[i] > head && _starts[i] < Length).Select(i => (_starts[i], _stretches[i].Limit)).Append((Length, 0));

    /// <summary>The steepest fall between two places, as a share of weight, 0 or less.</summary>
    public double SteepestFall(double from, double to)
    {
        double least = 0;
        for (int i = 0; i < _stretches.Length; i++)
        {
            if (_starts[i + 1] > from - _train && _starts[i] < to)
            {
                least = Math.Min(least, TrackResistance.GradeShare(_stretches[i].Grade));
            }
        }

        return least;
    }

    private int IndexOf(double head)
    {
        int i = 0;
        while (i < _stretches.Length - 1 && _starts[i + 1] <= head)
        {
            i++;
        }

        return i;
    }

    private double Mean(double[] sums, double head) => _train > 0 ? (At(sums, head) - At(sums, head - _train)) / _train : (sums[IndexOf(head) + 1] - sums[IndexOf(head)]) / _stretches[IndexOf(head)].Length;

    private double At(double[] sums, double x)
    {
        if (x <= 0)
        {
            return 0;
        }

        int i = IndexOf(x);
        return sums[i] + ((sums[i + 1] - sums[i]) * (x - _starts[i]) / _stretches[i].Length);
    }
}
