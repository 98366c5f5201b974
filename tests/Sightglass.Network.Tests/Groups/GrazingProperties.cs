using CsCheck;

namespace Sightglass.Network.Tests.Groups;

/// <summary>A switch whose number rises above its level and falls again inside one step is found all the same.</summary>
public sealed class GrazingProperties
{
    /// <summary>
    /// How far the peak stands above or below the level at least, in tolerances: more than the run's own error, and so little that a step leaps over it
    /// (36 of the 100 cases were missed while only the ends of steps were looked at).
    /// </summary>
    private const double Clearance = 1;

    private static readonly Gen<(double A, double B, double Tolerance, double Beyond)> s_cases =
        Gen.Select(Gen.Double[-3, -1], Gen.Double[-3, -1], Gen.Double[-5, -3], Gen.Double[1, 4])
            .Where((a, b, _, _) => Math.Abs(a - b) is > 0.05 and < 1)
            .Select((a, b, t, m) => (Math.Pow(10, a), Math.Pow(10, b), Math.Pow(10, t), m * Clearance));

    [Fact]
    public void Propose_LevelJustBelowAPeak_FiresOnTheWayUp() => s_cases.Holds(c =>
    {
        Cascade cascade = new(c.A, c.B);
        double level = cascade.Peak - (c.Beyond * c.Tolerance);
        (double? fired, _) = cascade.Watch(level, c.Tolerance, 20 * cascade.PeakTime);
        Assert.True(level < 0 || fired is not null, "It was missed.");
        if (fired is { } at)
        {
            Assert.InRange(cascade.At(at) - level, -Clearance * c.Tolerance, Clearance * c.Tolerance);
            Assert.True(at < cascade.PeakTime, $"fired at {at}, the peak is at {cascade.PeakTime}");
        }
    });

    [Fact]
    public void Propose_LevelJustAboveAPeak_FiresNotAndTakesFewSteps() => s_cases.Holds(c =>
    {
        Cascade cascade = new(c.A, c.B);
        (double? fired, long steps) = cascade.Watch(cascade.Peak + (c.Beyond * c.Tolerance), c.Tolerance, 20 * cascade.PeakTime);
        (_, long unwatched) = cascade.Watch(2, c.Tolerance, 20 * cascade.PeakTime);
        Assert.Null(fired);
        Assert.InRange(steps, unwatched - 3, unwatched + 6);
    });
}
