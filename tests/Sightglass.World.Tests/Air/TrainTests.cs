using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>Vehicles coupled in a train share their air. Figures are common practice, no source, unless said.</summary>
public sealed class TrainTests
{
    private const double Psi = 6894.757293;

    private static Rig Charged() => new(TrainMachine.Plan("six coaches"), "charged");

    [Fact]
    public void Coupled_NamesAndPlaces_OfEachVehicle()
    {
        ClassBook train = TrainMachine.Book.Coupled("six coaches");
        Assert.Equal(["", "car 1", "car 2", "car 3", "car 4", "car 5", "car 6"], train.Vehicles.Select(v => v.Name));
        Assert.Equal((0.0, 20.0 + (6 * 26)), (train.Front, train.Length));
        Assert.Equal(20 + 26 + 0.2, train.Items["front brake pipe hose of car 2"].Position!.Value.X, 9);

        // The sixth is turned: its front is the end of the train, its left the right.
        Assert.Equal(20 + (6 * 26) - 0.2, train.Items["front brake pipe hose of car 6"].Position!.Value.X, 9);
        Assert.Equal(-0.4, train.Items["front brake pipe hose of car 6"].Position!.Value.Y, 9);
        Assert.Equal("rear brake pipe hose", train.Items["brake pipe coupling at the rear"].From!.Item);
        Assert.Equal("front brake pipe hose of car 1", train.Items["brake pipe coupling at the rear"].To!.Item);
        Assert.Equal("rear brake pipe hose of car 6", train.Items["brake pipe coupling between car 5 and car 6"].To!.Item);
        Assert.Equal(12, train.Items.Keys.Count(n => n.Contains(" coupling ", StringComparison.Ordinal)));
        Assert.Contains("brakes of car 3 are applied", train.Facts.Keys);
        Assert.Contains("brakes of every car are released", train.Facts.Keys);
        Assert.Contains("air is heard at the front of car 2", train.Signs.Keys);
    }

    [Fact]
    public void Coupled_MachineTurnedAtTheEnd_CarsStandBeforeItsFrontOrBehindItsRear()
    {
        ClassBook train = TrainMachine.Book.Coupled("pushed");

        // Turned at the end of the train, its rear faces the cars: they stand behind it in its own axes.
        Assert.Equal((0.0, 72.0), (train.Front, train.Length));
        Assert.Equal("rear brake pipe hose of car 2", train.Items["brake pipe coupling at the rear"].To!.Item);
        Assert.Equal(46.2, train.Items["rear brake pipe hose of car 1"].Position!.Value.X, 9);
        Assert.Equal("front brake pipe hose of car 2", train.Items["brake pipe coupling between car 1 and car 2"].From!.Item);
    }

    /// <summary>A full service reduction of 26 psi takes on every car; the release lets every one off.</summary>
    [Fact]
    public void Service_AppliesAndReleasesEveryCar()
    {
        using Rig rig = Charged();
        Assert.True(rig.At(1, "brakes of every car are released") >= 0);
        rig.Do(2, "brake handle", "full service");
        Assert.True(rig.At(60, "brakes of every car are applied") >= 0);
        Assert.Equal(84 * Psi, rig.At(120, "pressure of rear of the brake pipe of car 6"), 1.5 * Psi);
        rig.Do(120, "brake handle", "release");
        Assert.True(rig.At(240, "brakes of every car are released") >= 0);
    }

    /// <summary>The head of the train falls before its tail, and a car that a closed angle cock cuts off brakes not at all: every gauge in the cab looks right.</summary>
    [Fact]
    public void AngleCockClosed_CutsTheCarsBehindOff()
    {
        using Rig rig = Charged();
        rig.Do(1, "rear angle cock of car 3", "closed");
        rig.Do(2, "brake handle", "full service");
        Assert.Equal(84 * Psi, rig.Reads(90, "gauge"), 1.5 * Psi);
        Assert.True(rig.At(90, "brakes of car 3 are applied") >= 0);
        Assert.True(rig.At(90, "brakes of car 4 are released") >= 0);
        Assert.True(rig.At(90, "brakes of a car are released") >= 0);
    }

    /// <summary>Hoses pulled apart vent both parts: emergency on both, by every vent valve. The machine's relay valve feeds against it, so that near it some pressure stays.</summary>
    [Fact]
    public void PulledApart_BrakesBothParts()
    {
        using Rig rig = Charged();
        rig.Do(5, "brake pipe coupling between car 3 and car 4", "parted");
        double leading = rig.At(15, "pressure of rear of the brake pipe of car 3");
        Assert.True(leading < 20 * Psi, $"{leading / Psi} psi");
        Assert.True(rig.At(15, "pressure of rear of the brake pipe of car 6") < 10 * Psi);
        Assert.True(rig.At(20, "brakes of every car are applied") >= 0);
    }

    /// <summary>
    /// Vehicles that come apart tear all their hoses apart, by one fault, whichever coupling has it: nothing is left joined there, everything elsewhere, and both parts brake
    /// (common practice, no source).
    /// </summary>
    [Theory]
    [InlineData("brake pipe")]
    [InlineData("main reservoir pipe")]
    public void TrainParted_AtOneCoupling_PartsAllBetweenTheTwoVehicles(string line)
    {
        using Rig rig = Charged();
        rig.World.Do(new WorldAction.PutIn($"{line} coupling between car 3 and car 4", "train parted", ImmutableSortedDictionary<string, double>.Empty), SimTime.FromSeconds(5));
        foreach (string each in (string[])["brake pipe", "main reservoir pipe"])
        {
            Assert.True(rig.At(4, $"coupled of {each} coupling between car 3 and car 4") >= 0);
        }

        Assert.True(rig.At(25, "brakes of every car are applied") >= 0);
        foreach (string each in (string[])["brake pipe", "main reservoir pipe"])
        {
            Assert.True(rig.At(25, $"parted of {each} coupling between car 3 and car 4") >= 0);
            Assert.True(rig.At(25, $"coupled of {each} coupling between car 2 and car 3") >= 0);
            Assert.True(rig.At(25, $"coupled of {each} coupling between car 4 and car 5") >= 0);
        }
    }

    /// <summary>Emergency by the vent valve of every car goes faster along a train than the machine alone could empty it, front first.</summary>
    [Fact]
    public void Emergency_GoesFromCarToCar()
    {
        using Rig rig = new(TrainMachine.Plan("eighteen coaches"), "alone");
        rig.Do(0.5, "rear angle cock", "open");
        rig.Do(0.5, "main reservoir rear cock", "open");
        rig.Do(0.5, "rear angle cock of car 18", "closed");
        rig.Do(0.5, "rear main reservoir cock of car 18", "closed");
        double before = rig.At(30, "pressure of brake pipe of car 18");
        rig.Do(31, "emergency valve", "open");
        double[] at = [.. Enumerable.Range(1, 60).Select(i => rig.At(31 + (i * 0.1), "pressure of brake pipe of car 18"))];
        int fell = Array.FindIndex(at, p => p < before / 2);
        Assert.InRange(fell, 1, 50);
        Assert.True(rig.At(45, "brakes of every car are applied") >= 0);
    }

    /// <summary>A car of the situation is drawn among all: <c>of each car</c>.</summary>
    [Fact]
    public void EachCar_StandsForAllOfThem()
    {
        Situation dragging = TrainMachine.Book.Situations["dragging"];
        Assert.Equal(6, dragging.Start.Count(s => s.Name.StartsWith("pressure of auxiliary reservoir of car", StringComparison.Ordinal)));
        Assert.Equal(Enumerable.Range(1, 6).Select(i => $"auxiliary reservoir of car {i}"), dragging.Faults.Single().Items);
    }

    /// <summary>Charging from the machine a train that was empty takes minutes, the last car later than the first.</summary>
    [Fact]
    public void Charging_TheLastCarIsLater()
    {
        using Rig rig = Charged();
        rig.Do(0.5, "rear angle cock", "closed");
        rig.Do(1, "brake pipe coupling at the rear", "parted");
        rig.At(60, "pressure of brake pipe of car 1");
        rig.Do(61, "brake pipe coupling at the rear", "coupled");
        rig.Do(62, "rear angle cock", "open");
        double first = rig.At(63, "pressure of brake pipe of car 1"), last = rig.At(63, "pressure of rear of the brake pipe of car 6");
        Assert.True(first > last + Psi, $"{first / Psi} and {last / Psi}");
        Assert.Equal(110 * Psi, rig.At(900, "pressure of brake pipe of car 6"), 2 * Psi);
    }
}
