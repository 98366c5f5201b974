using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Tests;

/// <summary>A small invented machine: three compartments with valves and glasses on both sides, a panel on each side, a cab; behind it three cars with two trucks each.</summary>
internal static class TestBook
{
    public const string PanelRight = "fuel panel, right";
    public const string PanelLeft = "fuel panel, left";
    public const string Cab = "cab";
    public const string EngineRoom = "engine room, front";

    private static readonly string[] s_compartments = ["forward", "centre", "aft"];
    private static readonly Vehicle[] s_cars = [new(1, "car 1"), new(2, "car 2"), new(3, "car 3")];
    private static readonly string[] s_trucks = ["A truck", "B truck"];
    private static readonly KindSheet s_valve = new() { Name = "hand valve", Purpose = "", Role = KindRole.Path };
    private static readonly KindSheet s_gauge = new() { Name = "gauge", Purpose = "", Role = KindRole.Indication };
    private static readonly KindSheet s_tank = new() { Name = "tank", Purpose = "", Role = KindRole.Store };
    private static readonly KindSheet s_control = new() { Name = "handle", Purpose = "", Role = KindRole.Control };
    private static readonly KindSheet s_lamp = new() { Name = "lamp", Purpose = "", Role = KindRole.Indication, Lights = true };
    private static readonly Unit s_cm = UnitOf("1 cm");
    private static readonly Unit s_percent = UnitOf("1 %");
    private static readonly Unit s_psi = UnitOf("1 psi");

    /// <summary>Cards that others call, one of them in two languages; the last three are wrong on purpose.</summary>
    private static readonly string[] s_cards =
    [
        """
        Card: Close off a compartment
        For: mechanical, engineer
        Needs: lamp
        Let C be the compartment, one of forward, centre, aft.
        Must never: compartment C overflows.
        Done when: the engine runs.

        1. Read the sight glass of C as P1.
        2. Close the supply valve of C.
        3. Check that the supply valve of C is closed. If not, go to step 5.
        4. Go to the end.
        5. Stop, and tell the mechanical desk: the {C} supply valve stays open, its glass shows {P1}.
        """,
        "Card: Look round\nFor: mechanical\nMust never: much fuel is on the ground.\nDone when: the engine runs.\n\n1. Do card \"Close off a compartment\" with C = aft.\n",
        "Card: Leer\nFor: mechanical\nLet C be the compartment, one of forward, centre, aft.\nDone when: the engine runs.\n\n1. Close the supply valve of C.\n",
        "Karte: Leer\nFür: mechanical\nSei C das compartment, eines von forward, centre, aft.\nFertig, wenn: engine runs.\n\n1. Schließe supply valve von C.\n",
        "Card: There\nFor: mechanical\nDone when: the engine runs.\n\n1. Do card \"And back\".\n",
        "Card: And back\nFor: mechanical\nDone when: the engine runs.\n\n1. Do card \"There\".\n",
        "Card: Broken\nFor: mechanical\nDone when: the engine runs.\n\n1. Open the aft suply valve.\n",
    ];

    public static ClassBook Book { get; } = new()
    {
        Title = "Test machine",
        Items = Items().ToImmutableSortedDictionary(i => i.Name, i => i, StringComparer.Ordinal),
        Places = Places().ToImmutableSortedDictionary(p => p.Name, p => p, StringComparer.Ordinal),
        Roles = Roles().ToImmutableSortedDictionary(r => r.Name, r => r, StringComparer.Ordinal),
        Facts = Facts().ToImmutableSortedDictionary(f => f.Name, f => f, StringComparer.Ordinal),
        Signs = Signs().ToImmutableSortedDictionary(s => s.Name, s => s, StringComparer.Ordinal),
        CardTexts = [.. s_cards.Select((text, i) => new SourceText($"cards/{i}.card", text))],
        Hazards = Hazards().ToImmutableSortedDictionary(h => h.Name, h => h, StringComparer.Ordinal),
        Protections = Protections().ToImmutableSortedDictionary(p => p.Name, p => p, StringComparer.Ordinal),
        Vehicles = [Vehicle.Alone, .. s_cars],
    };

    public static Unit UnitOf(string text)
    {
        QuantityText.TryParseAny(text, Span.None, [], out Quantity quantity);
        return quantity.Unit;
    }

    private static IEnumerable<Item> Items()
    {
        foreach (string word in s_compartments)
        {
            yield return new() { Name = $"{word} compartment", Span = Span.None, Kind = s_tank, Places = [PanelRight, PanelLeft] };
            yield return Valve($"{word} supply valve");
            yield return Valve($"{word} return valve");
            yield return Valve($"{word} drain cock");
            yield return Glass(word, "right", PanelRight);
            yield return Glass(word, "left", PanelLeft);
        }

        foreach ((Vehicle car, string truck) in s_cars.SelectMany(c => s_trucks.Select(t => (c, t))))
        {
            Item window = Gauge(car.NameOf($"{truck} window, right"), s_psi, 80, car.NameOf($"{truck}, right")) with { Vehicle = car };
            yield return window with { Reading = window.Reading! with { Words = window.Reading.Words.Clear().Add("released", (0, s_psi.ToSi(5))).Add("set", (s_psi.ToSi(10), s_psi.ToSi(80))) } };
        }

        yield return new() { Name = "low fuel lamp", Span = Span.None, Kind = s_lamp, Places = [Cab] };
        yield return Control("marker switch", ["dark", "lit"], Cab);
        yield return Gauge("cab fuel gauge", s_percent, 1, Cab);
        yield return Gauge("panel fuel gauge", s_percent, 1, PanelRight);
        yield return Gauge("fuel pressure gauge", s_psi, 100, EngineRoom);
        yield return new() { Name = "front wheel", Span = Span.None, Kind = s_control, Places = [PanelRight] };
        yield return new() { Name = "tail hose", Span = Span.None, Kind = s_control, Positions = ["disconnected", "connected"], Places = [PanelRight], ConnectsTo = ["front wheel"] };
        yield return Control("throttle", ["idle", "notch 1", "notch 8"], Cab);
        yield return Control("fuel pump switch", ["off", "on"], EngineRoom);
        yield return Control("emergency fuel cut-off, right", ["normal", "pushed"], PanelRight);
        yield return Control("emergency fuel cut-off, left", ["normal", "pushed"], PanelLeft);
        yield return Control("emergency cut-off valve", ["open", "tripped"], EngineRoom);
        yield return Control("engine", ["stopped", "running"], EngineRoom, Cab) with { Authority = new(["engineer"], "engineer", []) };
        yield return Control("head-end power switch", ["off", "on"], Cab) with { Authority = new(["engineer"], null, ["conductor"]) };
    }

    private static Item Valve(string name) => new()
    {
        Name = name,
        Span = Span.None,
        Kind = s_valve,
        Places = [PanelRight, PanelLeft],
        Positions = ["closed", "open"],
        UsualPosition = "open",
        Authority = new(["mechanical", "engineer", "conductor"], null, []),
    };

    private static Item Glass(string word, string side, string place) => new()
    {
        Name = $"{word} sight glass, {side}",
        Span = Span.None,
        Kind = s_gauge,
        Places = [place],
        Reading = new()
        {
            Span = Span.None,
            Unit = s_cm,
            Minimum = 0.02,
            Maximum = 0.78,
            Resolution = 0.01,
            Words = ImmutableSortedDictionary<string, (double From, double To)>.Empty.Add("low", (0.02, side == "right" ? 0.1 : 0.12)).Add("room", (0.02, 0.64)).Add("full", (0.72, 0.78)),
        },
    };

    private static Item Gauge(string name, Unit unit, double full, string place) => new()
    {
        Name = name,
        Span = Span.None,
        Kind = s_gauge,
        Places = [place],
        Reading = new()
        {
            Span = Span.None,
            Unit = unit,
            Maximum = unit.ToSi(full) * (unit.Symbol == "%" ? 100 : 1),
            Resolution = unit.Factor,
            Words = ImmutableSortedDictionary<string, (double From, double To)>.Empty.Add("low", (0, 0.2 * unit.ToSi(unit.Symbol == "%" ? 100 : full))),
        },
    };

    private static Item Control(string name, ImmutableArray<string> positions, params ImmutableArray<string> places) =>
        new() { Name = name, Span = Span.None, Kind = s_control, Positions = positions, Places = places };

    private static IEnumerable<Place> Places() =>
    [
        new(PanelRight, Span.None, new(8.9, 2.4, 0), true, ""),
        new(PanelLeft, Span.None, new(8.9, -2.4, 0), true, ""),
        new("tank aft, right", Span.None, new(11.7, 2.4, 0), true, ""),
        new(Cab, Span.None, new(3, 0, 1.9), false, ""),
        new(EngineRoom, Span.None, new(8, 0, 1.9), false, ""),
        .. s_cars.SelectMany(c => s_trucks.Select((t, i) => new Place(c.NameOf($"{t}, right"), Span.None, new((25 * c.Index) + (18 * i), 2.4, 0), true, "") { Vehicle = c })),
    ];

    private static IEnumerable<Role> Roles() =>
        new[] { "engineer", "conductor", "mechanical", "mechanical desk" }.Select(r => new Role(r, Span.None, 1.3, 2, "", []));

    private static IEnumerable<Fact> Facts() =>
        new[] { "engine runs", "engine starves", "a compartment overflows", "much fuel is on the ground" }
            .Concat(s_compartments.Select(c => $"{c} compartment is empty"))
            .Concat(s_compartments.Select(c => $"{c} compartment overflows"))
            .Select(f => new Fact(f, Span.None, "", Span.None, ""));

    private static IEnumerable<Sign> Signs() =>
        s_compartments.Select(c => new Sign($"fuel is seen at the foot of the {c} compartment", Span.None, "seen", "", Span.None, [PanelRight, PanelLeft]))
            .Append(new("the engine is heard to run", Span.None, "heard", "", Span.None, []))
            .Append(new("fuel is smelled", Span.None, "smelled", "", Span.None, [PanelRight]));

    private static IEnumerable<Hazard> Hazards() =>
    [
        new("between the vehicles", Span.None, ["tank aft, right"], [], null, Span.None, "going between", new(SignalWord.Warning, "", Span.None)),
        new("live switch", Span.None, [], ["head-end power switch"], null, Span.None, "wheel chock", new(SignalWord.Danger, "", Span.None)) { OnTouch = true },
    ];

    private static IEnumerable<Protection> Protections() =>
    [
        new("going between", Span.None, ProtectionSort.Asked, "engineer", [], ""),
        new("lock and tag", Span.None, ProtectionSort.Locks, "", ["fuel pump switch"], ""),
        new("blue signals", Span.None, ProtectionSort.SetAt, "", [Cab, PanelRight], ""),
        new("wheel chock", Span.None, ProtectionSort.Chocks, "", ["front wheel"], ""),
    ];
}
