using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests.Heat;

/// <summary>
/// A machine in service is never still: the thermostat of a radiator fan switches it in and out, a minute in and nine minutes out, as often as the heat asks. So it takes more steps than one that stands, and they go with the switchings.
/// </summary>
public sealed class ThermostatStepsTests(ITestOutputHelper output)
{
    private const string Thermostat = "fan thermostat 1";
    private const int Seconds = 18_000;

    /// <summary>Band 74 to 79 °C of the water. Of a switching each network that knows nothing of it takes one step, that of the heat those by which a jump of two time constants is followed to 1 mK.</summary>
    [Fact]
    public void Run_FiveHoursInService_StepsGoWithTheSwitchings()
    {
        Situation situation = Books.Curlew.Book.Situations["machine in service"];
        Plan plan = Books.CurlewFleet.For(null, situation.Train)!;
        using LaneBank bank = new(plan);
        World world = new(bank, 0);
        SituationStart.Bind(plan, situation, [])!.Apply(world, 1, 0);
        Signal told = plan.FindSignal($"picked up of {Thermostat}")!;
        bool isIn = false;
        List<double> switched = [];
        world.OnSample = w =>
        {
            if (w.Value(told) >= 0 != isIn)
            {
                isIn = !isIn;
                switched.Add(w.Now.Seconds);
            }
        };
        for (int t = 1; t <= Seconds; t++)
        {
            world.SampleAt(SimTime.FromSeconds(t));
            world.RunTo(SimTime.FromSeconds(t));
        }

        Assert.True(world.Trouble is null, world.Trouble);
        long[] steps = [.. plan.Stepped.Select(n => bank.Group(n).Steps(0)).OrderDescending()];
        output.WriteLine($"{switched.Count} switchings, steps {string.Join(" ", steps)}");
        Assert.InRange(switched.Count, 40, 80);
        Assert.All(switched.Skip(1).Zip(switched.Skip(2)), p => Assert.True(p.Second - p.First > 45, $"{p.First} s and {p.Second} s"));
        Assert.True(steps[0] < 40 * switched.Count, $"{steps[0]} steps of the heat in {switched.Count} switchings");
        Assert.All(steps.Skip(2), n => Assert.True(n < 100 + (1.5 * switched.Count), $"{n} steps"));
    }
}
