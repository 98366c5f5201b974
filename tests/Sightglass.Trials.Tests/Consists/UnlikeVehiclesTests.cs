using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Trials.Consists;

namespace Sightglass.Trials.Tests.Consists;

/// <summary>Vehicles that do not go together: another voltage, a line at the wrong end, a line that is something else.</summary>
public sealed class UnlikeVehiclesTests
{
    private const string Book = """
        book: Small trains
        roles: { hand: { walks: 1.3 m/s } }
        places: { yard: { x: 19 m, y: 2.4 m } }
        systems: { power: { medium: power, alive: yes } }
        items:
          bars: { kind: busbar, system: power }
          supply: { kind: three-phase source, system: power, to: bars, volts: 480 V, power: 100 kW }
          plug: { kind: receptacle, system: power, pins: { 1: bars }, who: [hand], places: [yard], for: Takes the jumper., normal: Shut. }
        ends: { rear: { faces: rear, joins: { train power: plug } } }
        making up: { lines: { train power: { needed: yes, lost: Its people sit in the dark. } } }
        hauling: { mass: 80 t, driven axles: 4, power: 800 kW }
        cars:
          old car:
            hauling: { mass: 30 t }
            places: { "A end": { x: 1 m, y: 2.4 m } }
            items:
              bars: { kind: busbar, system: power }
              plug: { kind: receptacle, system: power, pins: { 1: bars }, who: [hand], places: ["A end"], for: Takes the jumper., normal: Shut. }
              load: { kind: three-phase load, system: power, from: bars, power: 5 kW, rated voltage: 240 V }
            ends: { "A": { faces: front, joins: { train power: plug } } }
          hosed car:
            places: { "A end": { x: 1 m, y: 2.4 m } }
            items:
              line: { kind: air line, volume: 10 L }
              hose: { kind: hose, length: 1 m, diameter: 30 mm, who: [hand], places: ["A end"], for: Joins., normal: Whole. }
              cock: { kind: hand valve, from: line, to: hose, diameter: 30 mm, who: [hand], places: ["A end"], for: Shuts., normal: Shut. }
            ends: { "A": { faces: front, joins: { train power: hose } } }

        """;

    [Fact]
    public void Check_ACarOfAnotherVoltage_MustNotBePlugged()
    {
        TrainCheckResult r = Check("[machine, old car]");
        Assert.Equal(480, r.Power!.Loads[0].Volts, 480 * 0.02);
        Says(r, FindingWeight.Stops, "Car 1: is made for 240\u202FV and gets 4");
    }

    [Fact]
    public void Check_ACarTurned_CouldBeCoupledTheOtherWayRound()
    {
        TrainCheckResult r = Check("[machine, { vehicle: old car, turned: yes }]");
        Assert.Equal(LineState.WrongEnd, r.Joints[0].Lines[0].State);
        Says(r, FindingWeight.Mend, "Train power: car 1 has it at its other end alone. Turned, it could be coupled between the machine and car 1.");
        Says(r, FindingWeight.Stops, "Train power: does not reach car 1. Its people sit in the dark.");
    }

    [Fact]
    public void Check_APlugBeforeAHose_CannotBeCoupled()
    {
        TrainCheckResult r = Check("[machine, hosed car]");
        Assert.Equal(LineState.Unlike, r.Joints[0].Lines[0].State);
        Says(r, FindingWeight.Stops, "Train power: cannot be coupled between the machine and car 1. What the two ends have for it does not go together: plug, hose of car 1.");
    }

    /// <summary>What the book does not say is told, and nothing is worked out from it.</summary>
    [Fact]
    public void Check_ABookThatSaysLittle_TellsWhatIsNotKnown()
    {
        TrainCheckResult r = Check("[machine, hosed car]");
        Assert.Null(r.Brakes);
        Assert.Null(r.Pull);
        Says(r, FindingWeight.Mind, "The mass of car 1 is not known, so tonnage, speed and holding are not worked out: write `mass` at it.");
        Says(r, FindingWeight.Mind, "The book does not say what sets the brakes of a train in full, so how many of them work is not told.");
        Assert.NotNull(Check("[machine, { vehicle: hosed car, mass: 20 t }]").Pull);
    }

    private static void Says(TrainCheckResult r, FindingWeight weight, string says) => Assert.Contains(r.Findings, f => f.Weight == weight && f.Says().StartsWith(says, StringComparison.Ordinal));

    private static TrainCheckResult Check(string vehicles)
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", Book)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found));
        Consist? consist = ConsistReader.Read(new SourceText("train.yaml", $"vehicles: {vehicles}"), book, found);
        Assert.True(consist is not null, string.Join('\n', found));
        return TrainCheck.Of(book, consist);
    }
}
