using System.Collections.Immutable;
using Sightglass.Network.Compile;
using Sightglass.Network.Groups;
using Sightglass.Reference.Tests.Laws;
using Sightglass.Reference.Tests.Networks;

namespace Sightglass.Reference.Tests.Runs;

/// <summary>A reference problem compiled for the kernel.</summary>
public sealed class ReferenceNetwork
{
    private readonly Dictionary<(InputKind Kind, int Index), Input> _inputs = [];
    private readonly List<PathHandle> _heads = [];
    private readonly List<PathHandle> _orifices = [];
    private readonly Amount _outside;

    private ReferenceNetwork(NetFile file)
    {
        File = file;
        NetworkBuilder builder = new();
        _outside = builder.AddBoundary<OutsideStore>("outside", [file.OutsidePotential]).First;
        Nodes = [.. file.Nodes.Select((_, i) => AddNode(builder, i))];
        AddFrictionsAndHeads(builder);
        AddOrifices(builder);
        AddRelays(builder);
        AddSources(builder);
        Topology = builder.Build();
    }

    public NetFile File { get; }

    public Topology Topology { get; }

    /// <summary>The amounts of the file's nodes, in its order.</summary>
    public ImmutableArray<Amount> Nodes { get; }

    /// <summary>What has passed to the outside.</summary>
    public Amount Outside => _outside;

    public static ReferenceNetwork Of(NetFile file) => new(file);

    /// <summary>The input that a switch or the schedule sets.</summary>
    public Input InputOf(InputKind kind, int index) => _inputs[(kind, index)];

    /// <summary>The parameter that is the size of an orifice.</summary>
    public int SizeOfOrifice(int orifice) => _orifices[orifice].FirstParameter;

    /// <summary>The parameter that is the size of a head path.</summary>
    public int SizeOfHead(int head) => _heads[head].FirstParameter;

    /// <summary>Amount of a node at a potential.</summary>
    public double AmountAt(int node, double potential) => CapacityOf(node) * potential;

    /// <summary>A follower's capacity is its lag.</summary>
    public double CapacityOf(int node) => File.Relays.FirstOrDefault(r => r.Z == node)?.Lag ?? File.Nodes[node].Capacity;

    /// <summary>All that lane 0 holds, with what has passed to the outside; followers hold nothing.</summary>
    public double Sum(LaneGroup group) => Stores.Sum(n => group.GetAmount(0, n)) + group.GetAmount(0, _outside);

    /// <summary>What rounding is to be judged against: the sizes of the terms of <see cref="Sum"/>.</summary>
    public double Scale(LaneGroup group) => Stores.Sum(n => Math.Abs(group.GetAmount(0, n))) + Math.Abs(group.GetAmount(0, _outside));

    private IEnumerable<Amount> Stores => Nodes.Where((_, i) => File.Relays.All(r => r.Z != i));

    private Amount AddNode(NetworkBuilder builder, int node)
    {
        NodeRow row = File.Nodes[node];
        return builder.AddStore<LinearStore>(row.Name, LinearStore.ParametersOf(CapacityOf(node)), [AmountAt(node, row.Start)], [SpanOf(node)]).First;
    }

    /// <summary>The range that a potential moves in: 10 bar or 1 m of head, a relay's ±1, 20 m behind a pump.</summary>
    private double SpanOf(int node)
    {
        if (File.Relays.Any(r => r.Z == node))
        {
            return 2;
        }

        return File.Orifices.Length > 0 ? 10 : File.Nodes[node].Name is "PMP" or "RAIL" ? 20 : 1;
    }

    private void AddFrictionsAndHeads(NetworkBuilder builder)
    {
        foreach ((FrictionRow f, int i) in File.Frictions.Select((f, i) => (f, i)))
        {
            builder.AddPath<FrictionLaw>($"fric {i}", [Node(f.A), Node(f.B)], [FlowOf(f.A, f.B)], [f.K, f.Epsilon], []);
        }

        foreach ((HeadRow h, int i) in File.Heads.Select((h, i) => (h, i)))
        {
            Input open = NewInput(builder, InputKind.HeadOpening, i, h.Open);
            _heads.Add(builder.AddPath<HeadLaw>($"head {i}", [Node(h.A), Node(h.B)], [FlowOf(h.A, h.B)], [h.K, h.Epsilon, h.Offset], [open]));
        }
    }

    private void AddOrifices(NetworkBuilder builder)
    {
        foreach ((ControlRow c, int i) in File.Controls.Select((c, i) => (c, i)))
        {
            NewInput(builder, InputKind.ControlTarget, i, c.C0);
            NewInput(builder, InputKind.ControlGain, i, c.Gain);
        }

        foreach ((OrificeRow o, int i) in File.Orifices.Select((o, i) => (o, i)))
        {
            _orifices.Add(o.Kind switch
            {
                OrificeKind.Plain => builder.AddPath<PlainOrificeLaw>(
                    $"orif {i}", [Node(o.A), Node(o.B)], [FlowOf(o.A, o.B)], [o.C], [NewInput(builder, InputKind.OrificeOpening, i, o.P1)]),
                OrificeKind.Check => builder.AddPath<CheckOrificeLaw>(
                    $"orif {i}", [Node(o.A), Node(o.B)], [FlowOf(o.A, o.B)], [o.C, o.P1, 1 / o.P2], []),
                _ => AddControlled(builder, $"orif {i}", o),
            });
        }
    }

    private PathHandle AddControlled(NetworkBuilder builder, string name, OrificeRow o)
    {
        int row = (int)o.P1;
        ControlRow c = File.Controls[row];
        Input[] inputs = [InputOf(InputKind.ControlTarget, row), InputOf(InputKind.ControlGain, row)];
        return c.C == NetFile.Outside
            ? builder.AddPath<FixedTargetOrificeLaw>(name, [Node(o.A), Node(o.B), Node(c.D)], [FlowOf(o.A, o.B)], [o.C, o.P2, c.C2], inputs)
            : builder.AddPath<TrackingOrificeLaw>(
                name, [Node(o.A), Node(o.B), Node(c.D), Node(c.C)], [FlowOf(o.A, o.B)], [o.C, o.P2, c.C2, c.C1, c.Low, c.High, c.Delta, 0.5 / c.Delta], inputs);
    }

    private void AddRelays(NetworkBuilder builder)
    {
        foreach (RelayRow r in File.Relays)
        {
            builder.AddPath<RelayLaw>($"relay {r.Z}", [Node(r.Z), Node(r.E), Node(r.B)], [new(Node(r.Z), Amount.None)], [r.Enabled / r.Width], []);
        }
    }

    private void AddSources(NetworkBuilder builder)
    {
        foreach ((SourceRow s, int i) in File.Sources.Select((s, i) => (s, i)))
        {
            Input flow = NewInput(builder, InputKind.Source, i, s.Flow);
            builder.AddPath<SourceLaw>($"src {i}", [_outside, Node(s.Node)], [new(_outside, Node(s.Node))], [], [flow]);
        }
    }

    private Input NewInput(NetworkBuilder builder, InputKind kind, int index, double start) => _inputs[(kind, index)] = builder.AddInput(start);

    private Amount Node(int node) => node == NetFile.Outside ? _outside : Nodes[node];

    private Flow FlowOf(int a, int b) => new(Node(a), Node(b));
}
