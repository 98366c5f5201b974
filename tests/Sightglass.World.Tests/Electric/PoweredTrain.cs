using System.Collections.Concurrent;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Electric;

/// <summary>
/// A machine that feeds two coaches over a power line with 480 V: the loop through all plugs and the last cover holds the contactor, a supply at the wayside stands at the far end, and a control line with a door wire on each side goes along.
/// </summary>
internal static class PoweredTrain
{
    public const string Text = """
        book: Power line
        length: 20 m
        width: 3 m
        places: { cab: { x: 5 m, y: 0 m }, rear: { x: 19 m, y: 2.4 m } }
        roles: { hand: { walks: 1.3 m/s } }
        systems:
          power: { medium: power, alive: yes, text: "480 V." }
          control: { medium: control, alive: yes, text: "What switches it." }
        legs: [ { from: cab, to: rear, takes: 10 s } ]
        trains:
          two coaches: { text: Two coaches., vehicles: [this machine, coach, { vehicle: coach }] }
          one turned: { text: "Two coaches, the second turned.", vehicles: [this machine, coach, { vehicle: coach, turned: yes }] }
        situations:
          alone: { people: [ { role: hand, at: cab } ], start: { engine switch: run, key: "off" } }
          train: { train: two coaches, people: [ { role: hand, at: [rear] } ], start: { engine switch: run, key: "on" } }
          turned: { train: one turned, people: [ { role: hand, at: [rear] } ], start: { engine switch: run, key: "on" } }
        items:
          engine switch: { kind: handle, positions: [stop, run], who: [hand], places: [cab] }
          key: { kind: switch, who: [hand], places: [cab] }
          bypass: { kind: switch, who: [hand], places: [cab] }
          minus: { kind: wire, system: control }
          plus: { kind: wire, system: control }
          keyed: { kind: wire, system: control }
          loop out: { kind: wire, system: control }
          loop back: { kind: wire, system: control }
          battery: { kind: battery, system: control, from: minus, to: plus, cells: 32, capacity: 420 Ah }
          key contact: { kind: contact, system: control, from: plus, to: keyed, closed while: on of key }
          loop feed: { kind: contact, system: control, from: keyed, to: loop out, closed while: on of key }
          bypass contact: { kind: contact, system: control, from: keyed, to: loop back, closed while: on of bypass }
          power contactor: { kind: contactor, system: control, from: loop back, to: minus, resistance: 300 Ohm, picks at: 40 V, drops at: 20 V }
          left doors: { kind: wire, system: control }
          right doors: { kind: wire, system: control }
          left door switch: { kind: switch, who: [hand], places: [cab] }
          left door contact: { kind: contact, system: control, from: plus, to: left doors, closed while: on of left door switch }
          bars: { kind: busbar, system: power }
          behind the contactor: { kind: busbar, system: power }
          power line: { kind: busbar, system: power }
          alternator: { kind: three-phase source, system: power, to: bars, power: 500 kW, driven by: engine switch, droop: 3 % }
          power contact: { kind: three-phase contact, system: power, from: bars, to: behind the contactor, closed while: picked up of power contactor }
          power breaker: { kind: three-phase breaker, system: power, from: behind the contactor, to: power line, rating: 800 A, who: [hand], places: [cab] }
          meter: { kind: gauge, shows: voltage of bars, scale: 0 V .. 600 V, resolution: 5 V, places: [cab] }
          power receptacle: { kind: receptacle, system: power, pins: { 1: power line, 4: loop out, 5: loop back }, cover joins: [loop out, loop back], who: [hand], places: [rear] }
          door receptacle: { kind: receptacle, system: control, pins: { 1: minus, 5: right doors, 6: left doors }, jumper crosses: 5 with 6, who: [hand], places: [rear] }
        ends:
          rear: { faces: rear, joins: { power: power receptacle, doors: door receptacle } }
        cars:
          coach:
            text: A coach.
            length: 26 m
            places: { A end: { x: 1 m, y: 2.4 m }, B end: { x: 25 m, y: 2.4 m } }
            items:
              loop out: { kind: wire, system: control }
              loop back: { kind: wire, system: control }
              minus: { kind: wire, system: control }
              left doors: { kind: wire, system: control }
              right doors: { kind: wire, system: control }
              left door magnet: { kind: contactor, system: control, from: left doors, to: minus, picks at: 40 V, drops at: 20 V }
              right door magnet: { kind: contactor, system: control, from: right doors, to: minus, picks at: 40 V, drops at: 20 V }
              A line: { kind: busbar, system: power }
              B line: { kind: busbar, system: power }
              line through the car: { kind: three-phase cable, system: power, from: A line, to: B line, resistance: 3 mOhm, reactance: 2 mOhm }
              car load: { kind: three-phase load, system: power, from: A line, power: 60 kW, power factor: 90 % }
              wayside switch: { kind: switch, who: [hand], places: [B end] }
              wayside supply: { kind: three-phase source, system: power, to: B line, power: 200 kW, driven by: wayside switch }
              A receptacle: { kind: receptacle, system: power, pins: { 1: A line, 4: loop out, 5: loop back }, cover joins: [loop out, loop back], who: [hand], places: [A end] }
              B receptacle: { kind: receptacle, system: power, pins: { 1: B line, 4: loop out, 5: loop back }, cover joins: [loop out, loop back], who: [hand], places: [B end] }
              A door receptacle: { kind: receptacle, system: control, pins: { 1: minus, 5: left doors, 6: right doors }, jumper crosses: 5 with 6, who: [hand], places: [A end] }
              B door receptacle: { kind: receptacle, system: control, pins: { 1: minus, 5: right doors, 6: left doors }, jumper crosses: 5 with 6, who: [hand], places: [B end] }
            ends:
              A: { faces: front, joins: { power: A receptacle, doors: A door receptacle } }
              B: { faces: rear, joins: { power: B receptacle, doors: B door receptacle } }
        """;

    private static readonly Lazy<ClassBook> s_book = new(Read);

    private static readonly ConcurrentDictionary<string, Plan> s_plans = new(StringComparer.Ordinal);

    /// <summary>The machine in one of its trains.</summary>
    public static Plan Plan(string train) => s_plans.GetOrAdd(train, Compile);

    private static Plan Compile(string train)
    {
        DiagnosticList found = new();
        Plan? plan = PlanCompiler.Compile(s_book.Value.Coupled(train), found);
        Assert.True(plan is not null, string.Join('\n', found));
        return plan;
    }

    private static ClassBook Read()
    {
        DiagnosticList found = new();
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", Text)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null && !found.HasErrors, string.Join('\n', found));
        return book;
    }
}
