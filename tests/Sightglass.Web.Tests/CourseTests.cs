using CsCheck;
using Sightglass.Basics.Time;
using Sightglass.Web.Live;

namespace Sightglass.Web.Tests;

/// <summary>Where a world is to be by the clock on the wall: by arithmetic.</summary>
public sealed class CourseTests
{
    private static readonly Pace[] s_paces = [Pace.Half, Pace.Real, Pace.Four, Pace.Sixty];

    private readonly ManualClock _clock = new();

    /// <summary>However often it is asked, seconds times rate: nothing adds up.</summary>
    [Fact]
    public void At_AskedOften_IsTheStraightLine() => Gen.Select(Gen.Int[0, 5_000_000], Gen.Int[1, 120], Gen.Int[1, 900_000].List[1, 60]).Holds(((int From, int Rate, List<int> Waits) drawn) =>
    {
        (int from, int rate, List<int> waits) = drawn;
        ManualClock clock = new();
        Course course = new(clock);
        course.Set(new(from), rate / 2.0, null);
        foreach (int wait in waits)
        {
            clock.Pass(wait / 1e6);
            double due = from + (clock.GetTimestamp() / 1e6 * rate / 2 * SimTime.TicksPerSecond);
            Assert.InRange(course.At(clock.GetTimestamp()).Ticks - due, -1, 1);
        }
    });

    /// <summary>Beats come on whole parts of a simulated second, from whatever moment and at whatever reading of the clock it was let go, and none is left out.</summary>
    [Fact]
    public void At_Beats_AreWholeParts() => Gen.Select(Gen.Int[0, 50_000_000], Gen.Int[0, 5_000_000], Gen.Int[0, Metre.Phases - 1], Gen.Int[0, 3]).Holds(((int From, int Wall, int Phase, int Pace) drawn) =>
    {
        (int from, int wall, int phase) = (drawn.From, drawn.Wall, drawn.Phase);
        Pace pace = s_paces[drawn.Pace];
        ManualClock clock = new();
        Metre metre = new(clock, 0, phase);
        clock.Pass(wall / 1e6);
        Course course = new(clock);
        course.Set(new(from), pace.Rate(), metre);
        double part = pace.Rate() * 0.1;
        long beat = metre.Next(clock.GetTimestamp());
        long parts = -1;
        for (int i = 0; i < 40; i++, beat = metre.Next(beat + 1))
        {
            SimTime at = course.At(beat);
            if (at.Ticks < from)
            {
                Assert.True(i < 2, "it begins within two beats");
                continue;
            }

            long whole = (long)Math.Round(at.Seconds / part);
            Assert.InRange(at.Ticks - SimTime.FromSeconds(whole * part).Ticks, 0, 0);
            Assert.True(parts < 0 || whole == parts + 1, $"part {whole} after {parts}");
            parts = whole;
        }

        Assert.True(parts > 0);
    });

    /// <summary>After a pause of the computer it does not race: one second at most, and beats are still whole.</summary>
    [Fact]
    public void At_AfterAPause_MakesUpForOneSecond()
    {
        Metre metre = new(_clock, 0, 3);
        Course course = new(_clock);
        course.Set(SimTime.Zero, 1, metre);
        _clock.Pass(0.5);
        double before = course.At(metre.Last(_clock.GetTimestamp())).Seconds;
        _clock.Pass(3600);
        double after = course.At(metre.Last(_clock.GetTimestamp())).Seconds;
        Assert.InRange(after - before, 0.8, 1.0001);
        Assert.Equal(0, (after * 10) - Math.Round(after * 10), 5);
    }

    [Fact]
    public void Metre_NextAndLast_HoldAReadingBetweenThem() => Gen.Select(Gen.Long[0, 100_000_000], Gen.Long[0, 50_000_000], Gen.Int[0, Metre.Phases - 1]).Holds(((long Wall, long Origin, int Phase) drawn) =>
    {
        (long wall, long origin, int phase) = drawn;
        Metre metre = new(_clock, origin, phase);
        long next = metre.Next(wall), last = metre.Last(wall);
        Assert.True(next >= wall);
        Assert.True(last <= wall || last == metre.Next(0));
        Assert.InRange(next - last, 0, 100_000);
        Assert.Equal(phase * 10_000, (next - origin) % 100_000);
    });
}
