using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Causes;

namespace Sightglass.Trials.Tests.Causes;

/// <summary>One relay with a switch in the cab, a breaker in a room thirteen metres off, and a lamp beside the breaker that shows whether current comes that far. All of it is invented.</summary>
internal static class Works
{
    public const string Text = """
        book: Works
        length: 20 m
        roles: { hand: {} }
        places: { cab: { x: 2 m, y: 2 m }, room: { x: 15 m, y: 2 m } }
        systems: { control: { medium: control } }
        items:
          minus: { kind: wire, system: control }
          plus: { kind: wire, system: control }
          feed: { kind: wire, system: control }
          asked: { kind: wire, system: control }
          battery: { kind: battery, system: control, from: minus, to: plus, cells: 32, capacity: 420 Ah }
          breaker: { kind: breaker, system: control, from: plus, to: feed, rating: 15 A, who: [hand], places: [room] }
          switch: { kind: switch, who: [hand], places: [cab] }
          contact: { kind: contact, system: control, from: feed, to: asked, closed while: on of switch }
          relay: { kind: contactor, system: control, from: asked, to: minus, picks at: 40 V, drops at: 20 V }
          feed lamp: { kind: lamp, lit when: voltage of feed - voltage of minus > 40 V, places: [room] }
          asked lamp: { kind: lamp, lit when: voltage of asked - voltage of minus > 40 V, places: [room] }
        facts:
          it works: { is: picked up of relay }
        situations:
          working: { people: [{ role: hand, at: [cab] }], start: { switch: "on" } }
          at rest: { people: [{ role: hand, at: [cab] }], start: { switch: "off" } }
        searches:
          it does not work: { wanted: it works, situation: working, within: 10 s }
          it rests: { wanted: it works, situation: at rest, within: 10 s }
          it is lost: { wanted: it flies, situation: working }
        """;

    public static BoundSearch? Bind(string search, DiagnosticList found)
    {
        ClassBook book = BookReader.Read([new SourceText("book.yaml", Text)], [], KindLibrary.Catalog, found)!;
        return BoundSearch.Bind(Fleet.Compile(book, found)!, book.Searches[search], found);
    }

    public static CauseTable Table()
    {
        DiagnosticList found = [];
        BoundSearch search = Bind("it does not work", found) ?? throw new InvalidOperationException(string.Join('\n', found));
        return CauseTable.Make(search, 1, out _) ?? throw new InvalidOperationException("It does not work.");
    }
}
