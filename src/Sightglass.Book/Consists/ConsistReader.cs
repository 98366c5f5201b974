using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Consists;

/// <summary>
/// Reads the file of a train that somebody makes up, against the book of its class. Reports everything at once, with the codes of any file of a book; hostile input is refused within the
/// same limits and never throws.
/// </summary>
public sealed class ConsistReader
{
    /// <summary>What a person writes for a machine of the class: the first is the one that the book is about.</summary>
    public const string Machine = "machine";

    private const double Steepest = 0.1;
    private const double Sharpest = 30;

    private readonly ClassBook _book;
    private readonly ReadContext _context;

    private ConsistReader(ClassBook book, ReadContext context) => (_book, _context) = (book, context);

    /// <param name="source">The file.</param>
    /// <param name="book">Whose classes it names.</param>
    /// <param name="found">Takes errors.</param>
    /// <param name="limits">How large it may be.</param>
    /// <returns>Null where there was an error.</returns>
    public static Consist? Read(SourceText source, ClassBook book, DiagnosticList found, YamlLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(found);
        Findings findings = new(found, limits ?? YamlLimits.Default);
        ReadContext context = new(findings, new([]));
        ImmutableArray<YamlNode> documents = new YamlFile(new YamlBudget(findings.Limits), findings).Read(source);
        Span whole = source.Between(0, 0);
        Consist? consist = documents is [var only] ? new ConsistReader(book, context).Read(only, whole) : null;
        if (documents.Length != 1 && !findings.HasErrors)
        {
            findings.Add(BookMessages.WrongShape(documents is [_, var second, ..] ? second.Span : whole, "the file of a train", "one map of keys", documents.IsEmpty ? "nothing" : "several documents"));
        }

        return findings.HasErrors ? null : consist;
    }

    private Consist? Read(YamlNode node, Span whole)
    {
        if (MapReader.Of(node, whole, "the file of a train", _context) is not { } map)
        {
            return null;
        }

        string title = map.Text("consist", "?");
        Consist consist = new(title, map.Required("vehicles", "[ machine, CAR ]") ? Vehicles(map.Take("vehicles")!) : [])
        {
            Grade = Within(map, "grade", 0, Steepest, "0 % to 10 %, up the steepest grade"),
            Curve = Within(map, "curve", 0, Sharpest, "0 to 30, degrees of 100 ft"),
            Adhesion = Within(map, "adhesion", 0.01, 0.5, "1 % to 50 %", Consist.UsualAdhesion),
        };
        map.Finish();
        return consist with { Title = title == "?" ? Path.GetFileNameWithoutExtension(whole.Path) : title };
    }

    private double Within(MapReader map, string key, double least, double most, string right, double absent = 0)
    {
        double value = map.Number(key, Dimension.One, absent);
        if (value < least || value > most)
        {
            _context.Add(BookMessages.OutOfRange(map.SpanOf(key), $"`{key}`", map.Text(key), right));
        }

        return Math.Clamp(value, least, most);
    }

    private ImmutableArray<ConsistVehicle> Vehicles(YamlNode node)
    {
        if (node is not YamlList list || list.Items.IsEmpty)
        {
            _context.Add(BookMessages.WrongShape(node.Span, "`vehicles`", "a list of vehicles from the head of the train", node is YamlList ? "an empty one" : node.Described));
            return [];
        }

        int most = _context.Found.Limits.Vehicles;
        List<ConsistVehicle> vehicles = [];
        foreach (YamlNode one in list.Items)
        {
            (ConsistVehicle? vehicle, int count) = Vehicle(one);
            if (count > most - vehicles.Count)
            {
                _context.Add(BookMessages.TooManyVehicles(one.Span, most));
                return [];
            }

            vehicles.AddRange(vehicle is null ? [] : Enumerable.Repeat(vehicle, count));
        }

        return WithTheMachine(vehicles, node.Span);
    }

    /// <summary>Of machines that are just called so the first is the one that the book is about.</summary>
    private ImmutableArray<ConsistVehicle> WithTheMachine(List<ConsistVehicle> vehicles, Span span)
    {
        int own = vehicles.FindIndex(v => v.Listed.IsThisMachine);
        own = own >= 0 ? own : vehicles.FindIndex(v => v.Listed.Class == Machine && !v.IsDead);
        own = own >= 0 ? own : vehicles.FindIndex(v => v.Listed.Class == Machine);
        ConsistVehicle[] named = [.. vehicles.Where(v => v.Listed.IsThisMachine)];
        if ((own < 0 || named.Length > 1) && !_context.Found.HasErrors)
        {
            _context.Add(own < 0 ? BookMessages.NoMachine(span) : BookMessages.MachineTwice(named[1].Listed.Span));
        }

        return [.. vehicles.Select((v, i) => v.Listed.Class == Machine || v.Listed.IsMachine ? AsMachine(v, i == own) : v)];
    }

    private static ConsistVehicle AsMachine(ConsistVehicle vehicle, bool isOwn) =>
        vehicle with { Listed = vehicle.Listed with { Class = isOwn ? TrainVehicle.ThisMachine : TrainVehicle.AnotherMachine, RoadNumber = isOwn || vehicle.Number.Length == 0 ? null : vehicle.Number } };

    private (ConsistVehicle? Vehicle, int Count) Vehicle(YamlNode node)
    {
        if (node is YamlScalar)
        {
            return (Values.Scalar(node, "an element of `vehicles`", _context) is { } only ? Of(only, turned: false)?.Vehicle : null, 1);
        }

        if (MapReader.Of(node, node.Span, "the vehicle", _context) is not { } map)
        {
            return (null, 1);
        }

        YamlScalar? type = map.Required("vehicle", "CAR") ? map.Scalar("vehicle") : null;
        int count = map.Whole("count") ?? 1;
        bool turned = map.YesNo("turned", absent: false);
        string number = map.Text("number");
        double mass = map.Positive("mass", Dimension.Kilogram, 0);
        bool dead = map.YesNo("dead", absent: false);
        ReadContext names = _context.Within();
        ImmutableArray<Setting> stands = MakingUpReader.Settings(map.Take("stands"), "`stands`", names);
        ImmutableArray<YamlScalar> lines = map.List("not coupled behind");
        map.Finish();
        if (type is null || Of(type, turned) is not var (vehicle, of))
        {
            return (null, count);
        }

        Check(map, vehicle, of, number, dead, count);
        Check(of, stands, names.References);
        foreach (YamlScalar line in lines.Where(l => !of.Ends.Values.Any(e => e.Joins.ContainsKey(l.Value))))
        {
            _context.Add(BookMessages.NotAChoice(line.Span, "`not coupled behind`: what its ends join", line.Value, of.Ends.Values.SelectMany(e => e.Joins.Keys).Distinct(StringComparer.Ordinal)));
        }

        return (vehicle with { Number = number, Mass = mass > 0 ? mass : null, IsDead = dead, Stands = stands, NotCoupled = [.. lines.Select(l => (l.Value, l.Span))] }, count);
    }

    /// <summary>A vehicle of a class and what describes it; null where there is no such class.</summary>
    private (ConsistVehicle Vehicle, ClassBook Of)? Of(YamlScalar type, bool turned)
    {
        string name = type.Value.Trim();
        bool isMachine = name == Machine || TrainVehicle.IsMachineClass(name);
        if (isMachine || _book.Cars.ContainsKey(name))
        {
            return (new(new TrainVehicle(name, turned, type.Span)), isMachine ? _book : _book.Cars[name]);
        }

        _context.Add(BookMessages.NotDeclared(NameUse.Car, type.Span, name, _book.Cars.Keys.Append(Machine)));
        return null;
    }

    private void Check(MapReader map, ConsistVehicle vehicle, ClassBook of, string number, bool dead, int count)
    {
        bool isMachine = of.CarClass is null;
        if (isMachine && number.Length > 0 && !_book.RoadNumbers.ContainsKey(number))
        {
            _context.Add(BookMessages.NotDeclared(NameUse.RoadNumber, map.SpanOf("number"), number, _book.RoadNumbers.Keys));
        }

        if (dead && !isMachine)
        {
            _context.Add(BookMessages.OutOfRange(map.SpanOf("dead"), "`dead`", "yes", $"left away: `{vehicle.Listed.Class}` is no machine"));
        }

        if (count > 1 && number.Length > 0)
        {
            _context.Add(BookMessages.OutOfRange(map.SpanOf("number"), "`number`", number, "of one vehicle alone: list each by itself"));
        }
    }

    private void Check(ClassBook of, ImmutableArray<Setting> stands, ImmutableArray<NameReference> items)
    {
        foreach (NameReference named in items.Where(i => !of.Items.ContainsKey(i.Name)))
        {
            _context.Add(BookMessages.NotDeclared(NameUse.Item, named.Span, named.Name, _context.Found.Similar(of.Items.Values.Where(i => !i.Positions.IsEmpty).Select(i => i.Name))));
        }

        foreach (Setting set in stands.Where(s => of.Items.TryGetValue(s.Item, out Item? item) && !item.Positions.Contains(s.Position)))
        {
            _context.Add(BookMessages.NoSuchPosition(set.Span, set.Position, set.Item, of.Items[set.Item].Positions));
        }
    }
}
