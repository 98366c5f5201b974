using Sightglass.Basics.Numbers;

namespace Sightglass.Network.Circuits;

/// <summary>
/// How long a breaker or fuse stands a current: points of its maker's curve, straight lines between them on paper with both scales logarithmic. Under a current that changes the shares dt/t add up and it
/// opens at 1: <see cref="RateAt"/> is what a counter is fed with. Common practice, no source.
/// </summary>
public sealed class TripCurve
{
    private readonly double[] _logMultiples;
    private readonly double[] _logSeconds;
    private readonly double _first;

    /// <param name="points">Multiples of the rating, rising, and the s that each is stood, not rising. Two or more, all above 0.</param>
    public TripCurve(params ReadOnlySpan<(double Multiple, double Seconds)> points)
    {
        if (points.Length < 2)
        {
            throw new ArgumentException("A trip curve has two points or more.", nameof(points));
        }

        _logMultiples = new double[points.Length];
        _logSeconds = new double[points.Length];
        for (int i = 0; i < points.Length; i++)
        {
            (double multiple, double seconds) = points[i];
            if (!(multiple > 0 && seconds > 0) || (i > 0 && !(multiple > points[i - 1].Multiple && seconds <= points[i - 1].Seconds)))
            {
                throw new ArgumentException(FormattableString.Invariant($"Point {i + 1} of a trip curve: currents rise, times do not, and all are above 0."), nameof(points));
            }

            _logMultiples[i] = Portable.Log(new Scalar(multiple)).V;
            _logSeconds[i] = Portable.Log(new Scalar(seconds)).V;
        }

        _first = points[0].Multiple;
    }

    /// <summary>s that a current is stood: endless below the first point, from the last on as long as there.</summary>
    /// <param name="multiple">Of the rating, 0 or more.</param>
    public double SecondsAt(double multiple)
    {
        if (!(multiple >= _first))
        {
            return double.PositiveInfinity;
        }

        double x = Portable.Log(new Scalar(multiple)).V;
        int i = 1;
        while (i < _logMultiples.Length - 1 && x > _logMultiples[i])
        {
            i++;
        }

        double share = Math.Min(1, (x - _logMultiples[i - 1]) / (_logMultiples[i] - _logMultiples[i - 1]));
        return Portable.Exp(new Scalar(_logSeconds[i - 1] + (share * (_logSeconds[i] - _logSeconds[i - 1])))).V;
    }

    /// <summary>Share of the way to opening for each second, 1/s: 0 below the first point.</summary>
    public double RateAt(double multiple) => 1 / SecondsAt(multiple);
}
