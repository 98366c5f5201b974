using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Tests.Support;
using Sightglass.Trials.Consists;

namespace Sightglass.Trials.Tests.Consists;

/// <summary>Trains of the demo, checked: what comes out against figures worked out by hand, and every lack found with what follows from it.</summary>
public sealed class TrainCheckTests
{
    private const double Pound = 4.4482216152605;
    private const double ShortTon = 907.18474;
    private const double MileAnHour = 0.44704;

    private static readonly Lazy<TrainCheckResult> s_nightMail = new(() => Check("grade: 1.5 %\nadhesion: 20 %\nvehicles: [machine, baggage car, { vehicle: coach, count: 4 }, { vehicle: coach, turned: yes }]"));

    private static readonly Lazy<TrainCheckResult> s_twoMachines = new(() => Check("grade: 1 %\nvehicles: [machine, { vehicle: machine, turned: yes }, { vehicle: coach, count: 2 }]"));

    [Fact]
    public void Check_AWholeTrain_HasPowerBrakesAndAnswers()
    {
        TrainCheckResult r = s_twoMachines.Value;
        Assert.Equal(FindingWeight.Mind, r.Verdict);
        Assert.Equal(1, r.Brakes!.Share);
        Assert.All(r.Power!.Loads, l => Assert.True(l.Works));
        Assert.All(r.Commands, c => Assert.All(c.Units, u => Assert.True(u.Answers, $"{c.Command.Name}, vehicle {u.Vehicle}")));
        Assert.Equal([0, 1], r.Pull!.Pulling);
    }

    /// <summary>Source: I = P/(√3·U·cos φ) (Kersting, Distribution System Modeling and Analysis, from memory); loads keep their power, unlike phases and losses take some per cent more.</summary>
    [Fact]
    public void Power_AlongTheTrain_IsThatOfItsLoads()
    {
        TrainPower power = s_nightMail.Value.Power!;
        double[] volts = [.. power.Loads.Select(l => l.Volts)];
        Assert.Equal([.. volts.OrderDescending()], volts);
        double watts = (5 * 55_000 * 0.8) + (12_000 * 0.8);
        Assert.InRange(power.Sources.Sum(s => s.Watts), watts, watts * 1.03);
        double amperes = watts / (Math.Sqrt(3) * volts[0] * 0.88);
        double first = power.Jumpers.Where(j => j.Item.Name.EndsWith("at the rear", StringComparison.Ordinal)).Sum(j => j.Amperes);
        Assert.InRange(first, amperes, amperes * 1.08);
        Assert.All(power.Jumpers.Zip(power.Jumpers.Skip(2)), p => Assert.True(p.First.Amperes > p.Second.Amperes));
    }

    /// <summary>Source: a US Army manual of rail transport (read), (TE − 20·W)/(RR + 20·G): as in A4_04; rolling resistance by Davis 1926 (from memory), pounds for each short ton.</summary>
    [Fact]
    public void Tonnage_OfATrain_IsThatOfTheManual()
    {
        TrainPull pull = s_nightMail.Value.Pull!;
        double machine = s_nightMail.Value.Vehicles[0].Mass!.Value / ShortTon;
        double effort = 0.20 * machine * 2000;
        double rolling = Cars().Sum(tons => tons * Davis(tons / 4, 10, 0.00034)) / Cars().Sum();
        double tons = (effort - (20 * machine)) / (rolling + (20 * 1.5));
        Assert.Equal(tons, pull.Tonnage / ShortTon, tons * 1e-3);
        Assert.Equal(effort, pull.Adhesion / Pound, effort * 1e-3);
        Assert.Equal(Cars().Sum(), pull.Trailing / ShortTon, 0.01);
    }

    /// <summary>Source: 375·hp/V = ΣW·R + 20·G·ΣW (Hay, Railroad Engineering, from memory): as in A4_06; the grade by the rule is 0.01 % more than its sine. Of 2,050 kW at the rail nine tenths of what the cars take are gone (the book's own share).</summary>
    [Fact]
    public void BalanceSpeed_OfATrain_IsWherePullAndResistanceMeet()
    {
        TrainCheckResult r = s_nightMail.Value;
        double mph = r.Pull!.BalanceSpeed / MileAnHour, machine = r.Vehicles[0].Mass!.Value / ShortTon;
        double resists = (machine * Davis(machine / 4, mph, 0.0024, 11.5)) + Cars().Sum(t => t * Davis(t / 4, mph, 0.00034)) + (20 * 1.5 * r.Pull.Mass / ShortTon);
        double horsepower = (2_050_000 - (0.9 * r.Power!.Sources.Sum(s => s.Watts))) / 745.69987158;
        Assert.Equal(resists, 375 * horsepower / mph, resists * 2e-3);
    }

    /// <summary>Source: 49 CFR 238.15(d)(1) (read; rules/us-cfr49): axles with brakes that work over all axles; each axle cut out of a locomotive over 200,000 lb counts as two.</summary>
    [Theory]
    [InlineData("vehicles: [machine, { vehicle: coach, stands: { A truck cutout cock: closed } }]", 6.0 / 8)]
    [InlineData("vehicles: [{ vehicle: machine, stands: { front truck cutout cock: closed } }, coach]", 4.0 / 8)]
    [InlineData("vehicles: [machine, { vehicle: coach, not coupled behind: [brake pipe] }, coach]", 8.0 / 12)]
    public void Share_OfBrakesThatWork_IsThatOfTheRule(string train, double share)
    {
        TrainCheckResult r = Check(train);
        Assert.Equal(share, r.Brakes!.Share, 1e-9);
        Assert.Equal(FindingWeight.Stops, r.Verdict);
        Assert.Contains(Told(r), t => t.Contains("238.15", StringComparison.Ordinal));
    }

    /// <summary>Two lines stand side by side, but the loop goes out on one and back on the other: without a jumper on one side every car is dark.</summary>
    [Fact]
    public void Power_WithOneJumperMissing_IsNowhere()
    {
        TrainCheckResult r = Check("vehicles: [machine, coach, { vehicle: coach, not coupled behind: [head-end left] }, coach]");
        Assert.All(r.Power!.Loads, l => Assert.False(l.Works));
        Assert.Contains(Told(r), t => t.StartsWith("No car has head-end power", StringComparison.Ordinal));
        Assert.Contains(Told(r), t => t.StartsWith("Head-end left: does not reach car 3.", StringComparison.Ordinal));
    }

    /// <summary>A machine that is deaf pulls nothing: the tonnage is that of the other alone. Its brakes work by air, and so do those it gets by the independent pipe.</summary>
    [Fact]
    public void Commands_WithoutTheControlLine_ReachTheFirstMachineAlone()
    {
        TrainCheckResult r = Check("grade: 1 %\nvehicles: [{ vehicle: machine, not coupled behind: [control line] }, { vehicle: machine, turned: yes }, { vehicle: coach, count: 2 }]");
        Assert.Equal(["the independent brake"], r.Commands.Where(c => c.AnsweredBy(1)).Select(c => c.Command.Name));
        Assert.Equal([0], r.Pull!.Pulling);
        Assert.Equal(0.5 * s_twoMachines.Value.Pull!.Adhesion, r.Pull.Adhesion, r.Pull.Adhesion * 0.01);
        Assert.Equal(1, r.Brakes!.Share);
        Assert.Contains(Told(r), t => t.StartsWith("Unit 2: does not answer the leading cab in a notch", StringComparison.Ordinal));
    }

    [Fact]
    public void Check_AMachineHauledDead_BrakesAndDoesNotPull()
    {
        TrainCheckResult r = Check("vehicles: [machine, { vehicle: machine, dead: yes, turned: yes }]");
        Assert.Equal([0], r.Pull!.Pulling);
        Assert.All(r.Commands.Where(c => c.Command.Name is "a notch" or "power"), c => Assert.False(c.AnsweredBy(1))); // the relays of its direction have a battery, and follow
        Assert.Equal(1, r.Brakes!.Share);
        Assert.DoesNotContain(Told(r), t => t.Contains("does not answer", StringComparison.Ordinal));
    }

    [Fact]
    public void Order_OfCoupling_IsThatOfTheBookUnderItsProtections()
    {
        TrainCheckResult r = s_twoMachines.Value;
        Assert.Equal(r.Book.MakingUp!.Lines.Select(l => l.Line), r.Order.Select(s => s.Line));
        Assert.All(r.Order, s => Assert.Contains("going between", s.Protections.Select(p => p.Name)));
        Assert.All(r.Order.Where(s => s.Line.StartsWith("head-end", StringComparison.Ordinal)), s => Assert.Equal((SignalWord.Danger, true), (s.Gravest!.Caution.Word, s.Protections.Any(p => p.Name == "lock and tag"))));
        Assert.Equal([0], r.Order.Single(s => s.Line == "control line").Joints);
    }

    /// <summary>Statics: the grade pulls m·g·sin(atan G); hand brakes from the head, a fifth more (common practice).</summary>
    [Fact]
    public void Holding_OnAGrade_CountsHandBrakesFromTheHead()
    {
        TrainPull pull = s_nightMail.Value.Pull!;
        Assert.Equal(pull.Mass * 9.80665 * Math.Sin(Math.Atan(0.015)), pull.GradeForce, 1);
        Assert.Equal([0, 1], pull.HandBrakes!.Value); // 60 + 34 kN of 1.2 · 64 kN
        Assert.True(pull.BrakeForce > pull.GradeForce);
    }

    [Fact]
    public void Check_TooSteepForTheRail_SaysSo()
    {
        TrainCheckResult r = Check("grade: 3 %\nadhesion: 10 %\nvehicles: [machine, { vehicle: coach, count: 8 }]");
        Assert.False(r.Pull!.Starts);
        Assert.Contains(Told(r), t => t.StartsWith("It may not start on 3", StringComparison.Ordinal));
        Assert.Contains(Told(r), t => t.Contains("hang on, and by the rule", StringComparison.Ordinal));
    }

    private static IEnumerable<string> Told(TrainCheckResult r) => r.Findings.Select(f => f.Says());

    private static double[] Cars() => [46_000 / ShortTon, .. Enumerable.Repeat(54_000 / ShortTon, 5)];

    /// <summary>lb/ton: 1.3 + 29/w + 0.03·V + k·A·V²/(w·n), a front of 11 m² where nothing else is said.</summary>
    private static double Davis(double perAxle, double mph, double k, double front = 11) => 1.3 + (29 / perAxle) + (0.03 * mph) + (k * front / (0.3048 * 0.3048) * mph * mph / (perAxle * 4));

    private static TrainCheckResult Check(string train)
    {
        DiagnosticList found = [];
        Consist? consist = ConsistReader.Read(new SourceText("train.yaml", train), Books.Curlew.Book, found);
        Assert.True(consist is not null, string.Join('\n', found));
        return TrainCheck.Of(Books.Curlew.Book, consist);
    }
}
