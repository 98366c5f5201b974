using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.World.Tests.Air;

/// <summary>An invented machine with invented coaches: brake pipe and main reservoir pipe, hoses, control valves, cylinders.</summary>
internal static class TrainMachine
{
    private static readonly Lazy<ClassBook> s_book = new(Read);

    public static ClassBook Book => s_book.Value;

    /// <summary>The machine in one of its trains, with all situations.</summary>
    public static Plan Plan(string train)
    {
        DiagnosticList found = new();
        Plan? plan = PlanCompiler.Compile(Book.Coupled(train), found);
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

    public const string Text = """
        book: Train
        length: 20 m
        width: 3 m
        roles: { hand: { walks: 1.3 m/s } }
        places:
          cab: { x: 5 m, y: 2.4 m }
          "rear, left": { x: 19 m, y: -2.4 m }
        items:
          main reservoir: { kind: reservoir, volume: 900 L, start pressure: 135 psi }
          governor: { kind: governor, senses: main reservoir, cuts in: 130 psi, cuts out: 140 psi }
          compressor: { kind: compressor, to: main reservoir, displacement: 4 m^3/min, loaded by: governor }
          brake handle: { kind: handle, positions: [release, minimum, full service, emergency], who: [hand], places: [cab] }
          feed cock: { kind: handle, positions: [in, out], who: [hand], places: [cab] }
          equalising reservoir: { kind: reservoir, volume: 4 L, start pressure: 110 psi }
          handle valve: { kind: regulating valve, from: main reservoir, to: equalising reservoir, diameter: 2 mm, exhaust diameter: 1.6 mm, set by: brake handle, pressures: { release: 110 psi, minimum: 103 psi, full service: 84 psi, emergency: 0 psi } }
          relay: { kind: relay valve, from: main reservoir, to: brake pipe, follows: equalising reservoir, diameter: 12 mm, exhaust diameter: 12 mm, cut out by: feed cock }
          emergency valve: { kind: hand valve, from: brake pipe, to: outside, diameter: 25 mm, who: [hand], places: [cab] }
          brake pipe: { kind: air line, length: 20 m, diameter: 32 mm, start pressure: 110 psi }
          rear angle cock: { kind: hand valve, from: brake pipe, to: rear brake pipe hose, diameter: 28 mm, usual: open, who: [hand], places: ["rear, left"] }
          rear brake pipe hose: { kind: hose, length: 0.7 m, diameter: 32 mm, start pressure: 110 psi, places: ["rear, left"], who: [hand], for: Brake pipe., normal: Coupled. }
          main reservoir rear cock: { kind: hand valve, from: main reservoir, to: rear main reservoir hose, diameter: 22 mm, usual: open, who: [hand], places: ["rear, left"] }
          rear main reservoir hose: { kind: hose, length: 0.7 m, diameter: 25 mm, start pressure: 135 psi, places: ["rear, left"], who: [hand], for: Main reservoir., normal: Coupled. }
          gauge: { kind: gauge, shows: pressure of brake pipe, scale: 0 psi .. 160 psi, resolution: 1 psi, places: [cab] }
        ends:
          rear: { faces: rear, joins: { brake pipe: rear brake pipe hose, main reservoir pipe: rear main reservoir hose } }
        cars:
          coach:
            length: 26 m
            width: 3 m
            places:
              "front, right": { x: 1 m, y: 2.4 m }
              "front, left": { x: 1 m, y: -2.4 m }
              "rear, right": { x: 25 m, y: 2.4 m }
              "rear, left": { x: 25 m, y: -2.4 m }
              vestibule: { x: 1 m, y: 0 m, z: 1.3 m }
            legs:
              - { from: "front, right", to: vestibule, takes: 6 s }
            items:
              front brake pipe hose: { kind: hose, length: 0.7 m, diameter: 32 mm, start pressure: 110 psi, position: { x: 0.2 m, y: 0.4 m, z: 0.6 m }, places: ["front, left"], for: Brake pipe., normal: Coupled. }
              front angle cock: { kind: hand valve, from: front brake pipe hose, to: brake pipe, diameter: 28 mm, usual: open, who: [hand], places: ["front, left"] }
              brake pipe: { kind: air line, length: 13 m, diameter: 32 mm, start pressure: 110 psi }
              through pipe: { kind: pipe, from: brake pipe, to: rear of the brake pipe, length: 26 m, diameter: 32 mm }
              rear of the brake pipe: { kind: air line, length: 13 m, diameter: 32 mm, start pressure: 110 psi }
              rear angle cock: { kind: hand valve, from: rear of the brake pipe, to: rear brake pipe hose, diameter: 28 mm, usual: open, who: [hand], places: ["rear, left"] }
              rear brake pipe hose: { kind: hose, length: 0.7 m, diameter: 32 mm, start pressure: 110 psi, position: { x: 25.8 m, y: -0.4 m, z: 0.6 m }, places: ["rear, left"], for: Brake pipe., normal: Coupled. }
              front main reservoir hose: { kind: hose, length: 0.7 m, diameter: 25 mm, start pressure: 135 psi, places: ["front, left"], for: Main., normal: Coupled. }
              front main reservoir cock: { kind: hand valve, from: front main reservoir hose, to: main reservoir pipe, diameter: 22 mm, usual: open, who: [hand], places: ["front, left"] }
              main reservoir pipe: { kind: air line, length: 26 m, diameter: 25 mm, start pressure: 135 psi }
              rear main reservoir cock: { kind: hand valve, from: main reservoir pipe, to: rear main reservoir hose, diameter: 22 mm, usual: open, who: [hand], places: ["rear, left"] }
              rear main reservoir hose: { kind: hose, length: 0.7 m, diameter: 25 mm, start pressure: 135 psi, places: ["rear, left"], for: Main., normal: Coupled. }
              auxiliary reservoir: { kind: reservoir, volume: 57 L, start pressure: 110 psi }
              charging check: { kind: check valve, from: brake pipe, to: auxiliary reservoir, diameter: 3 mm }
              control valve: { kind: control valve, from: auxiliary reservoir, to: brake cylinder, senses: brake pipe, diameter: 6 mm, exhaust diameter: 6 mm }
              vent valve: { kind: vent valve, from: rear of the brake pipe, diameter: 25 mm }
              brake cylinder: { kind: brake cylinder, diameter: 250 mm, travel: 100 mm }
              indicator: { kind: lamp, lit when: pressure of brake cylinder > 5 psi, places: ["front, right"], for: Applied., normal: Dark. }
            facts:
              brakes of this car are applied: { is: pressure of brake cylinder > 20 psi }
              brakes of this car are released: { is: pressure of brake cylinder < 3 psi }
            signs:
              air is heard at the front: { sense: heard, when: head flow of front brake pipe hose > 10 L/min, from: ["front, left"] }
            ends:
              front: { faces: front, joins: { brake pipe: front brake pipe hose, main reservoir pipe: front main reservoir hose } }
              rear: { faces: rear, joins: { brake pipe: rear brake pipe hose, main reservoir pipe: rear main reservoir hose } }
        trains:
          two coaches: { vehicles: [this machine, { vehicle: coach, count: 2 }] }
          six coaches: { text: The usual train., vehicles: [this machine, { vehicle: coach, count: 5 }, { vehicle: coach, turned: yes }] }
          pushed: { vehicles: [{ vehicle: coach, count: 2 }, { vehicle: this machine, turned: yes }] }
          eighteen coaches: { vehicles: [this machine, { vehicle: coach, count: 18 }] }
          fifty coaches: { vehicles: [this machine, { vehicle: coach, count: 50 }] }
          two hundred: { vehicles: [this machine, { vehicle: coach, count: 199 }] }
        situations:
          alone:
            text: The machine alone, cock shut.
            start: { rear angle cock: closed, main reservoir rear cock: closed }
          charged:
            text: Six coaches, everything charged; the last cocks shut.
            train: six coaches
            start: { front angle cock of car 6: closed, front main reservoir cock of car 6: closed }
          dragging:
            train: six coaches
            start: { front angle cock of car 6: closed, front main reservoir cock of car 6: closed, pressure of auxiliary reservoir of each car: 100 psi .. 110 psi }
            faults: [ { fault: leak, on: auxiliary reservoir of each car, diameter: 2 mm } ]
        """;
}
