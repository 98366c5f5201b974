using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Calculators.Running;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Hauls;

namespace Sightglass.World.Tests.Hauls;

/// <summary>Trains of the demo over its route: what an instructor would ask, held against what must be so whatever the numbers are.</summary>
public sealed class HaulTests
{
    private const double Mile = 1609.344;
    private const double Gravity = 9.80665;

    private static readonly Lazy<HaulResult> s_local = new(() => Run(Local with { Fill = 0.6, StopsAt = [12 * Mile] }));

    private static readonly Lazy<HaulResult> s_dark = new(() => Run(Local with { Fill = 0.6, HeadEnd = 0 }));

    private static Route Route => Books.CurlewFleet.Class!.Book.Routes["Saltmarsh to Windlass"];

    private static HaulRequest Local => new(Route, "local train");

    /// <summary>What was pulled went into resistance, height and brakes; height is m·g·Δz.</summary>
    [Fact]
    public void Of_LocalTrain_ArrivesAndItsEnergyAddsUp()
    {
        HaulResult run = s_local.Value;
        Assert.Equal(RouteOutcome.Arrived, run.Outcome);
        Assert.Equal(0, run.Energy.Open, run.Energy.Pulled * 1e-9);
        double rise = run.Stretches.Sum(s => s.Length * TrackResistance.GradeShare(s.Grade));
        Assert.Equal(run.Train.Mass * Gravity * rise, run.Energy.Lifted, run.Train.Mass * Gravity * 1.0); // a metre of height for the few metres at which each stop misses
        Assert.Equal(["Saltmarsh", "Heron Quay", "Millrace", "Granary Summit", "Lantern Bridge", "Windlass Junction"], run.Calls.Select(c => c.Place!.Name));
        Assert.Equal([false, true, true, false, true, false], run.Calls.Select(c => c.Leaves > c.Arrives));
        Assert.All(run.Points.Zip(run.Points.Skip(1)), p => Assert.True(p.Second.Seconds >= p.First.Seconds && p.Second.Metres >= p.First.Metres));
    }

    /// <summary>Worked by hand: no train is faster than its limits let it, and this one loses on each stop and start what speeding up and braking cost, with its two and three minutes.</summary>
    [Fact]
    public void Of_LocalTrain_TakesTheTimeOfItsLimitsAndAlittleMore()
    {
        double atLimits = Route.Stretches.Sum(s => (s.To - s.From) / s.Limit), stands = Route.Places.Sum(p => p.Stops ?? 0);
        Assert.InRange(s_local.Value.End.Seconds, atLimits + stands, (atLimits + stands) * 1.2);
    }

    /// <summary>Half the machine's weight and cars by hand: 114 t, three coaches of 54 t, and 60 % of its compartments.</summary>
    [Fact]
    public void Of_LocalTrain_WeighsWhatItsVehiclesSay()
    {
        HaulResult run = s_local.Value;
        Assert.Equal(114e3 + (3 * 54e3) + (run.Fuel[0].Start * 840), run.Train.Mass, 1.0);
        Assert.Equal(3 * 55e3 * 0.8, run.Train.HeadEnd, 1.0);
        Assert.Equal(21 + (3 * 25.9), run.Train.Vehicles.Sum(v => v.Length), 1e-6);
    }

    /// <summary>The machine's mass under `running` is what the running gear carries: body, frames, axles, sand.</summary>
    [Fact]
    public void Mass_OfTheDemo_IsThatOfItsRunningGear()
    {
        ClassBook book = Books.CurlewFleet.Class!.Book;
        double gear = book.Items.Values.Where(i => i.Kind.Name is "body" or "truck frame" or "axle").Sum(i => i.Parameters["mass"].Number) + book.Items.Values.Sum(i => i.Parameters.GetValueOrDefault("full mass")?.Number ?? 0);
        Assert.InRange(book.Running!.Mass, gear - 500, gear + 500);
    }

    /// <summary>Fuel by the living system closes: what is gone from the compartments was burnt or is in the lines; and it is what the book's notches and the head-end load burn in that time, within a twentieth.</summary>
    [Fact]
    public void Of_LocalTrain_FuelByCompartmentIsWhatWasBurnt()
    {
        UnitFuel fuel = s_local.Value.Fuel.Single();
        Assert.Equal(3, fuel.Compartments.Length);
        Assert.Null(fuel.StoppedAt);
        Assert.Equal(fuel.Burnt[^1], fuel.Start - fuel.End, 0.005); // lines and headers hold some litres more or less
        Assert.All(fuel.Compartments, c => Assert.True(c.Volumes[^1] < c.Volumes[0]));
        HaulResult run = s_local.Value;
        Pulling pulling = run.Train.Pulling;
        (double Watts, double Rate)[] rates = [.. pulling.Notches.Select(n => (pulling.Power[n], Books.CurlewFleet.Class!.Book.Items["engine"].Parameters["consumption"].ByPosition[n])).OrderBy(r => r.Item1)];
        double planned = run.End.Seconds * run.Train.HeadEndShare * Books.CurlewFleet.Class!.Book.Items["engine"].Parameters["head-end consumption"].Number;
        foreach ((RoutePoint a, RoutePoint b) in run.Points.Zip(run.Points.Skip(1)))
        {
            double seconds = b.Seconds - a.Seconds, watts = seconds > 0 ? b.Pull * (b.Metres - a.Metres) / seconds : 0;
            int i = Math.Clamp(Array.FindIndex(rates, r => r.Watts >= watts), 1, rates.Length - 1);
            planned += seconds * (rates[i - 1].Rate + ((rates[i].Rate - rates[i - 1].Rate) * Math.Clamp((watts - rates[i - 1].Watts) / (rates[i].Watts - rates[i - 1].Watts), 0, 1)));
        }

        Assert.Equal(planned, fuel.Burnt[^1], planned * 0.05);
    }

    /// <summary>A compartment that is shut off keeps its fuel, and the others give it.</summary>
    [Fact]
    public void Of_CompartmentShutOff_KeepsItsFuel()
    {
        UnitFuel fuel = Run(Local with { Fill = 0.6, Sets = [("aft supply valve", "closed"), ("aft return valve", "closed")] }).Fuel.Single();
        CompartmentFuel aft = fuel.Compartments.Single(c => c.Item.Name == "aft compartment");
        Assert.Equal(aft.Volumes[0], aft.Volumes[^1], 0.002);
        Assert.Equal(fuel.Burnt[^1], fuel.Compartments.Where(c => c != aft).Sum(c => c.Volumes[0] - c.Volumes[^1]), 0.01);
    }

    /// <summary>With little fuel and one compartment shut off the engine starves with fuel on board; how far it came is told.</summary>
    [Fact]
    public void Of_LittleFuelWithOneShutOff_StarvesWithFuelOnBoard()
    {
        HaulResult run = Run(Local with { Fill = 0.05, Sets = [("fill of aft compartment", "60 %"), ("aft supply valve", "closed"), ("aft return valve", "closed")] });
        UnitFuel starved = run.Starved!;
        Assert.InRange(run.MetresAt(starved.StoppedAt!.Value), Mile, run.End.Metres - Mile);
        Assert.True(starved.End > 1, $"{starved.End} m³ left");
        Assert.Null(run.Range);
    }

    /// <summary>What is left above the margin, at what was burned for each metre: by hand from what the run tells.</summary>
    [Fact]
    public void Range_WithAMargin_IsWhatIsLeftOverWhatWasBurnt()
    {
        HaulResult run = s_local.Value;
        UnitFuel fuel = run.Fuel.Single();
        double left = fuel.End - (0.2 * fuel.Start);
        Assert.Equal(left / ((fuel.Start - fuel.End) / run.End.Metres), run.Range!.Metres, 1.0);
        Assert.True(Run(Local with { Fill = 0.6, Margin = 0.5 }).Range!.Metres < run.Range.Metres);
        Assert.True(s_dark.Value.Range!.Metres > run.Range.Metres);
    }

    /// <summary>With the second machine dead half the force is left on the same weight: slower on the climb, later at the end, and one machine burns for both.</summary>
    [Fact]
    public void Of_OneMachineDead_IsSlowerAndBurnsInOne()
    {
        HaulRequest express = new(Route, "double-headed express") { Fill = 0.6 };
        HaulResult whole = Run(express), dead = Run(express with { Dead = [2] });
        Assert.Equal((2, 1), (whole.Fuel.Length, dead.Fuel.Length));
        Assert.Equal(whole.Train.Mass, dead.Train.Mass, 1.0);
        double forCars = 0.9 * 6 * 55e3 * 0.8; // W at the rail: nine tenths of what six coaches take, once for the train
        Assert.Equal((2 * 2050e3) - forCars, whole.Running.Power, 1.0);
        Assert.Equal(2050e3 - forCars, dead.Running.Power, 1.0);
        Assert.True(dead.Balance < whole.Balance * 0.75, $"{dead.Balance} of {whole.Balance} m/s");
        Assert.True(dead.End.Seconds > whole.End.Seconds + 60);
        Assert.True(dead.Fuel[0].Burnt[^1] > whole.Fuel[0].Burnt[^1] * 1.3);
        Assert.True(dead.Range!.Metres < whole.Range!.Metres);
        Assert.True(whole.Fuel[0].Burnt[^1] > whole.Fuel[1].Burnt[^1]); // the first turns the source for the cars
    }

    /// <summary>What the cars take the engine cannot give to the wheels: three coaches cost 0.9 · 3 · 55 kW · 0.8 = 118.8 kW at the rail (the book's own share), so it climbs slower and comes later.</summary>
    [Fact]
    public void Of_CarsWithoutPower_IsFasterByWhatTheyTook()
    {
        HaulResult dark = s_dark.Value;
        Assert.Equal(0.9 * 3 * 55e3 * 0.8, dark.Running.Power - s_local.Value.Running.Power, 1.0);
        Assert.True(dark.Balance > s_local.Value.Balance);
        Assert.True(dark.End.Seconds < s_local.Value.End.Seconds);
    }

    /// <summary>On leaves the climb asks for more than the rail holds; sand brings a train up that stalls without it.</summary>
    [Fact]
    public void Of_LeavesOnTheRail_StallsWithoutSandAndClimbsWithIt()
    {
        HaulRequest mail = new(Route, "double-headed express") { Fill = 0.6, Rail = "leaves on the rail", Dead = [2] };
        HaulResult without = Run(mail with { Sands = false }), with = Run(mail);
        Assert.Equal((RouteOutcome.Stalled, 0.0), (without.Outcome, Math.Round(without.Balance, 1)));
        Assert.Equal(RouteOutcome.Arrived, with.Outcome);
    }

    /// <summary>By the living air an emergency takes longer than brakes that are there at once, and no longer than the closed form with its dead time and build-up counted in full before anything holds.</summary>
    [Fact]
    public void Stop_ByTheLivingAir_LiesBetweenAtOnceAndAllLost()
    {
        HaulResult run = s_local.Value;
        HaulStop stop = run.Stops.Single();
        Assert.InRange(stop.Speed, 60 * 0.44704, 79.5 * 0.44704);
        Assert.True(stop.Emergency.Metres > stop.EmergencyAtOnce.Metres + (stop.Speed * 0.5));
        BuildUp built = run.Emergency;
        Assert.InRange(built.DeadSeconds, 0.1, 6);
        Assert.InRange(built.BuildUpSeconds, 0.5, 20);
        Assert.True(stop.Emergency.Metres < stop.EmergencyAtOnce.Metres + (stop.Speed * (built.DeadSeconds + built.BuildUpSeconds)));
        double a = built.Newtons / (run.Train.Mass * 1.05);
        (_, double closed) = Stopping.WithBuildUp(stop.Speed, a, built.DeadSeconds, built.BuildUpSeconds);
        Assert.Equal(closed, stop.Emergency.Metres, closed * 0.1); // the closed form has neither resistance nor the little grade
        Assert.True(stop.Service.Metres > stop.Emergency.Metres);
    }

    /// <summary>The dynamic brake changes nothing of a stop and nothing of the run: a book without it gives the same.</summary>
    [Fact]
    public void Of_BookWithoutDynamicBrake_StopsAndRunsTheSame()
    {
        DiagnosticList found = [];
        ClassBook read = BookReader.Read(Books.FolderOf("curlew"), KindLibrary.Catalog, found)!;
        ClassBook without = read with { Running = read.Running! with { DynamicBrake = [] } };
        Fleet fleet = new();
        fleet.Add(without, found);
        List<HaulRefusal> refused = [];
        HaulResult run = Haul.Of(fleet, new HaulRequest(without.Routes["Saltmarsh to Windlass"], "local train") { Fill = 0.6, StopsAt = [12 * Mile] }, refused)!;
        Assert.All(run.Falls, f => Assert.Equal(0, f.Dynamic));
        Assert.Contains(s_local.Value.Falls, f => f.Dynamic > 0);
        Assert.Equal(s_local.Value.Stops[0].Emergency.Metres, run.Stops[0].Emergency.Metres);
        Assert.Equal(s_local.Value.End, run.End);
    }

    [Theory]
    [InlineData("did you mean `local train`", HaulInput.Train, "local trian")]
    [InlineData("has one machine", HaulInput.Dead, "3")]
    [InlineData("No machine is left", HaulInput.Dead, "1")]
    [InlineData("count them from the head", HaulInput.Dead, "second")]
    [InlineData("did you mean `wet`", HaulInput.Rail, "wett")]
    [InlineData("gives at most 600 kW", HaulInput.HeadEnd, "900 kW")]
    [InlineData("write `off`, or a power", HaulInput.HeadEnd, "much")]
    [InlineData("is no share", HaulInput.Fill, "140 %")]
    [InlineData("no fuel in any compartment", HaulInput.Fill, "0 %")]
    [InlineData("write `NAME = VALUE`", HaulInput.Sets, "aft supply valve")]
    [InlineData("did you mean `aft supply valve`", HaulInput.Sets, "aft suply valve = closed")]
    [InlineData("has no position `shut`", HaulInput.Sets, "aft supply valve = shut")]
    [InlineData("a value with its unit", HaulInput.Sets, "fill of aft compartment = 3 psi")]
    [InlineData("does not run at the start", HaulInput.Sets, "engine = stopped")]
    [InlineData("is no share", HaulInput.Margin, "100 %")]
    [InlineData("did you mean `Millrace`", HaulInput.StopsAt, "Milrace")]
    [InlineData("does not lie on the route", HaulInput.StopsAt, "90 mi")]
    public void Of_WrongInput_SaysWhatWouldBeRight(string says, HaulInput input, string typed)
    {
        List<HaulRefusal> refused = [];
        Dictionary<HaulInput, string> all = new() { [HaulInput.Train] = "local train", [input] = typed };
        HaulRequest request = new HaulReader(all, refused).Read(Route, sands: true);
        HaulResult? run = refused.Count == 0 ? Haul.Of(Books.CurlewFleet, request, refused) : null;
        Assert.Null(run);
        Assert.Contains(refused, r => r.Input == input && r.Sentence.Contains(says, StringComparison.Ordinal));
    }

    private static HaulResult Run(HaulRequest request)
    {
        List<HaulRefusal> refused = [];
        HaulResult? run = Haul.Of(Books.CurlewFleet, request, refused);
        Assert.True(run is not null, string.Join('\n', refused.Select(r => r.Sentence)));
        return run;
    }
}
