using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A signal by straight lines between points; beyond the first and last as in the stretch beside them.</summary>
/// <param name="source">What it follows from.</param>
/// <param name="points">Two or more, x rising.</param>
public sealed class LineSignal(Signal source, ImmutableArray<(double X, double Y)> points) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        Lanes x = source.Evaluate(bank);
        Lanes y = Stretch(x, 0);
        for (int i = 1; i < points.Length - 1; i++)
        {
            y = Lanes.Select(Lanes.Less(Lanes.Of(points[i].X), x), Stretch(x, i), y);
        }

        return y;
    }

    public override void TellReads(SignalReads reads) => reads.Add(source);

    private Lanes Stretch(Lanes x, int i)
    {
        double slope = (points[i + 1].Y - points[i].Y) / (points[i + 1].X - points[i].X);
        return Lanes.Fma(x - Lanes.Of(points[i].X), Lanes.Of(slope), Lanes.Of(points[i].Y));
    }
}
