using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Diagram;

/// <summary>Picks the items of a system out of a book and says what each is in a diagram.</summary>
internal sealed class DiagramReader(ClassBook book, string? system, int? vehicle, IReadOnlyCollection<string> crossed)
{
    private readonly Dictionary<string, DiagramNode> _nodes = new(StringComparer.Ordinal);

    /// <summary>Item → the nodes whose parameters name it.</summary>
    private ILookup<string, string> _namedBy = Array.Empty<string>().ToLookup(n => n);

    /// <summary>By vehicle: names as its class has them, longest first, and the nodes they are.</summary>
    private Dictionary<int, (string Own, string Node)[]> _own = [];

    public DiagramInput Read()
    {
        foreach (Item item in book.Items.Values.Where(i => IsNetwork(i) && (system is null || i.System == system) && IsHere(i)))
        {
            Add(item);
        }

        ImmutableArray<DiagramCrossing> crossings = [.. crossed.Order(StringComparer.Ordinal).Select(Crossing).OfType<DiagramCrossing>()];
        foreach (DiagramNode path in _nodes.Values.Where(n => n.Role is DiagramRole.Path or DiagramRole.Machine).ToList())
        {
            Include(path.From);
            Include(path.To);
        }

        _namedBy = _nodes.Keys.SelectMany(n => Named(book.Items[n]).Select(name => (name, n))).ToLookup(r => r.name, r => r.n, StringComparer.Ordinal);
        _own = _nodes.Values.GroupBy(n => n.Vehicle).ToDictionary(g => g.Key, g => g.Select(n => (OwnName(n), n.Id)).OrderByDescending(n => n.Item1.Length).ThenBy(n => n.Id, StringComparer.Ordinal).ToArray());
        foreach (DiagramNode line in _nodes.Values.Where(n => n.Role == DiagramRole.Line && _namedBy.Contains(n.Id)).ToList())
        {
            _nodes[line.Id] = line with { IsHeader = true };
        }

        foreach (Item item in book.Items.Values.Where(i => !_nodes.ContainsKey(i.Name) && IsHere(i)))
        {
            Attach(item);
        }

        foreach (DiagramNode path in _nodes.Values.Where(n => n.Role == DiagramRole.Path).ToList())
        {
            _nodes[path.Id] = path with { Feels = Feels(path) };
        }

        string medium = system is not null && book.Systems.TryGetValue(system, out SystemSheet? sheet) ? sheet.Medium : _nodes.Values.Select(n => book.Items[n.Id].Kind.Medium).FirstOrDefault(m => m is not null) ?? "";
        string title = system is null ? book.Title : Say.With($"{Say.Begin(Say.Book(system))} system of {book.Title}");
        return new DiagramInput(title, medium, [.. _nodes.Values.OrderBy(n => n.Order).ThenBy(n => n.Id, StringComparer.Ordinal)]) { Crossings = crossings };
    }

    // One of them is of this drawing; then so is the other.
    private DiagramCrossing? Crossing(string name)
    {
        if (!book.Items.TryGetValue(name, out Item? mistake) || mistake.Kind.Role != KindRole.Mistake)
        {
            return null;
        }

        Item[] couplings = [.. Named(mistake).Order(StringComparer.Ordinal).Select(n => book.Items.GetValueOrDefault(n)).OfType<Item>().Where(i => IsNetwork(i) && IsHere(i))];
        if (couplings is not [var one, var other] || !(_nodes.ContainsKey(one.Name) || _nodes.ContainsKey(other.Name)))
        {
            return null;
        }

        Include(one.Name);
        Include(other.Name);
        return new(name, one.Name, other.Name);
    }

    // A jumper joins many wires at once: it is no line of this drawing.
    private static bool IsNetwork(Item item) => item.Kind.Alternates
        || (!item.Kind.Conducts && item.Kind.Symbol != "jumper" && (item.Kind.Role is KindRole.Store or KindRole.Path || SymbolOf(item) == DiagramSymbol.Engine));

    // What couples two vehicles belongs to both.
    private bool IsHere(Item item) => vehicle is null || item.Vehicle.Index == vehicle
        || (item.Kind.Role == KindRole.Path && (VehicleOf(item.From) == vehicle || VehicleOf(item.To) == vehicle));

    private int? VehicleOf(PortReference? end) => End(end) is { } name && book.Items.TryGetValue(name, out Item? item) ? item.Vehicle.Index : null;

    // Lines and tanks of the drawing, and what only gives a signal: relays are in no pipe.
    private ImmutableArray<(string Word, string Node)> Feels(DiagramNode path) =>
    [
        .. book.Items[path.Id].Parameters.OrderBy(p => p.Key, StringComparer.Ordinal).SelectMany(p => p.Value.Names.Append(p.Value.Text).Distinct().Select(n => (p.Key, n)))
            .Where(f => f.n != path.From && f.n != path.To
                && (_nodes.TryGetValue(f.n, out DiagramNode? node) ? node.Role is DiagramRole.Tank or DiagramRole.Line : book.Items.TryGetValue(f.n, out Item? item) && item.Kind.Role == KindRole.Signal)),
    ];

    private void Include(string? name)
    {
        if (name is not null && !_nodes.ContainsKey(name) && book.Items.TryGetValue(name, out Item? item) && IsNetwork(item) && IsHere(item))
        {
            Add(item);
        }
    }

    private void Add(Item item)
    {
        DiagramSymbol symbol = SymbolOf(item);
        DiagramRole role = item.Kind.Role is KindRole.Store or KindRole.Wire
            ? symbol is DiagramSymbol.Line or DiagramSymbol.Pipe ? DiagramRole.Line : DiagramRole.Tank
            : symbol == DiagramSymbol.Engine ? DiagramRole.Machine : DiagramRole.Path;
        bool drains = role == DiagramRole.Path && symbol == DiagramSymbol.Valve && End(item.To) is null;
        _nodes[item.Name] = Node(item, role, drains ? DiagramSymbol.Drain : symbol) with
        {
            From = End(item.From),
            To = End(item.To),
            HasVent = role == DiagramRole.Tank && (item.Parameters.ContainsKey("vent area") || symbol == DiagramSymbol.Tank),
        };
    }

    // What shows or moves something in the drawing belongs to it, whatever its own system is.
    private void Attach(Item item)
    {
        ImmutableArray<string> named = [.. Named(item).Where(_nodes.ContainsKey).Order(StringComparer.Ordinal)];
        ImmutableArray<string> naming = [.. _namedBy[item.Name].Order(StringComparer.Ordinal)];
        DiagramSymbol symbol = SymbolOf(item);
        if (item.Kind.Role == KindRole.Control && named.Union(naming).Any())
        {
            _nodes[item.Name] = Node(item, DiagramRole.Control, symbol is DiagramSymbol.Box ? DiagramSymbol.Handle : symbol) with { Of = [.. named.Union(naming)] };
        }
        else if (item.Kind.Role == KindRole.Indication && symbol == DiagramSymbol.Glass && named.Length > 0)
        {
            _nodes[item.Name] = Node(item, DiagramRole.Glass, symbol) with { Of = named };
        }
        else if (item.Reading?.Formula is { } formula && Mentioned(formula, item.Vehicle.Index) is { IsEmpty: false } stores)
        {
            _nodes[item.Name] = Node(item, DiagramRole.Gauge, DiagramSymbol.Gauge) with { Of = stores, Detail = Short(formula) };
        }
    }

    private static IEnumerable<string> Named(Item item) => item.Parameters.Values.SelectMany(p => p.Names.Append(p.Text)).Distinct();

    // As the class of the vehicle has it: formulas are written in those names.
    private static string OwnName(DiagramNode node) => node.VehicleName.Length == 0
        ? node.Id
        : node.Id.Replace($" of {node.VehicleName}", "", StringComparison.Ordinal).Replace(node.VehicleName, Vehicle.ThisCar, StringComparison.Ordinal);

    private ImmutableArray<string> Mentioned(string formula, int vehicle)
    {
        List<string> found = [];
        foreach ((string own, string node) in _own.GetValueOrDefault(vehicle) ?? [])
        {
            if (Find(formula, own) is int at and >= 0)
            {
                for (; at >= 0; at = Find(formula, own))
                {
                    formula = string.Concat(formula.AsSpan(0, at), "·", formula.AsSpan(at + own.Length));
                }

                if (_nodes[node].Role is DiagramRole.Tank or DiagramRole.Line)
                {
                    found.Add(node);
                }
            }
        }

        return [.. found.Order(StringComparer.Ordinal)];
    }

    /// <summary>Where a name stands as whole words; -1 where it does not.</summary>
    private static int Find(string text, string name)
    {
        for (int at = text.IndexOf(name, StringComparison.Ordinal); at >= 0; at = text.IndexOf(name, at + 1, StringComparison.Ordinal))
        {
            int end = at + name.Length;
            if ((at == 0 || !IsWord(text[at - 1])) && (end == text.Length || !IsWord(text[end])))
            {
                return at;
            }
        }

        return -1;
    }

    private static bool IsWord(char c) => char.IsLetterOrDigit(c) || c == '_';

    // "volume of forward compartment" is "forward" to one who looks at the drawing.
    private string Short(string formula)
    {
        // A gauge that shows one thing alone says it in words: `temperature of cooling water`.
        if (formula.Split(" of ", 2) is [var quantity, var of] && !quantity.Contains(' ', StringComparison.Ordinal) && _nodes.TryGetValue(of, out DiagramNode? shown))
        {
            return Say.With($"{Say.Word(quantity)} of {Lower(shown.Label)}");
        }

        foreach (DiagramNode tank in _nodes.Values.Where(n => n.Role == DiagramRole.Tank).OrderByDescending(n => n.Id.Length))
        {
            formula = formula.Replace("volume of " + tank.Id, Lower(tank.Label), StringComparison.Ordinal);
        }

        return formula;
    }

    private static string Lower(string label) => label.Length == 0 ? label : char.ToLowerInvariant(label[0]) + label[1..];

    private static string? End(PortReference? reference) =>
        reference is null || !reference.IsItem ? null : reference.Item;

    private DiagramNode Node(Item item, DiagramRole role, DiagramSymbol symbol) =>
        new(item.Name, role, symbol, item.Label.Length > 0 ? Say.Book(item.Label) : Say.Begin(Say.Book(item.Name)))
        {
            Order = item.Position?.X ?? 0,
            Kind = item.Kind.Name,
            Medium = item.System is { } own && book.Systems.TryGetValue(own, out SystemSheet? sheet) ? sheet.Medium : "",
            Vehicle = item.Vehicle.Index,
            VehicleName = item.Vehicle.Name,
            IsEnd = item.Kind.CoupledBy is not null,
            IsOperated = item.Positions.Length > 1,
            IsSwitch = item.Positions.Length == 2 && (item.Positions.Contains("open") || (item.Kind.Alternates && item.Positions.Contains("on"))),
        };

    private static DiagramSymbol SymbolOf(Item item) => item.Kind.Symbol switch
    {
        "tank" => DiagramSymbol.Tank,
        "line" or "header" or "node" => DiagramSymbol.Line,
        "pipe" => DiagramSymbol.Pipe,
        "valve" => DiagramSymbol.Valve,
        "check" => DiagramSymbol.Check,
        "cut-off" or "cutoff" or "cut off" => DiagramSymbol.CutOff,
        "pump" => DiagramSymbol.Pump,
        "filter" => DiagramSymbol.Filter,
        "orifice" => DiagramSymbol.Orifice,
        "fill" => DiagramSymbol.Fill,
        "drain" => DiagramSymbol.Drain,
        "engine" => DiagramSymbol.Engine,
        "gauge" => DiagramSymbol.Gauge,
        "glass" or "sight glass" => DiagramSymbol.Glass,
        "button" => DiagramSymbol.Button,
        "switch" => DiagramSymbol.Switch,
        "handle" => DiagramSymbol.Handle,
        "reservoir" => DiagramSymbol.Reservoir,
        "cylinder" => DiagramSymbol.Cylinder,
        "compressor" => DiagramSymbol.Compressor,
        "relief" => DiagramSymbol.Relief,
        "regulator" => DiagramSymbol.Regulator,
        "relay" => DiagramSymbol.Relay,
        "control" => DiagramSymbol.ControlValve,
        "vent valve" => DiagramSymbol.Vent,
        "coupling" => DiagramSymbol.Coupling,
        "breaker" => DiagramSymbol.Breaker,
        "contact" => DiagramSymbol.Contact,
        "source" => DiagramSymbol.Source,
        "load" => DiagramSymbol.Load,
        _ => DiagramSymbol.Box,
    };
}
