using System.Collections.Immutable;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A signal by straight lines between points; beyond the first and last as in the stretch beside them.</summary>
/// <param name="source">What it follows from.</param>
/// <param name="points">Two or more, x rising.</param>
public sealed class LineSignal(Signal source, ImmutableArray<(double X, double Y)> points) : Signal
{
    public override Lanes Evaluate(LaneBank bank) => At(source.Evaluate(bank));

    public override Noted Note(SignalNotes notes) => At(notes.Of(source));

    public override void TellReads(SignalReads reads) => reads.Add(source);

    private T At<T>(T x)
        where T : struct, IReal<T>
    {
        T y = Stretch(x, 0);
        for (int i = 1; i < points.Length - 1; i++)
        {
            y = T.Select(T.Less(T.Of(points[i].X), x), Stretch(x, i), y);
        }

        return y;
    }

    private T Stretch<T>(T x, int i)
        where T : struct, IReal<T>
    {
        double slope = (points[i + 1].Y - points[i].Y) / (points[i + 1].X - points[i].X);
        return T.Fma(x - T.Of(points[i].X), T.Of(slope), T.Of(points[i].Y));
    }
}
