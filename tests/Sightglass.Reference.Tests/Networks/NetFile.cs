using System.Collections.Immutable;

namespace Sightglass.Reference.Tests.Networks;

/// <summary>A reference network as its file says it; units and laws in Data/README.md.</summary>
public sealed record NetFile
{
    /// <summary>Number of the node that is the outside.</summary>
    public const int Outside = -1;

    /// <summary>Pressure of the outside where the network holds gas, bar absolute.</summary>
    public const double Atmosphere = 1.013;

    /// <summary>Seconds.</summary>
    public required double End { get; init; }

    /// <summary>Seconds between samples.</summary>
    public required double Every { get; init; }

    public required ImmutableArray<NodeRow> Nodes { get; init; }

    public required ImmutableArray<FrictionRow> Frictions { get; init; }

    public required ImmutableArray<HeadRow> Heads { get; init; }

    public required ImmutableArray<OrificeRow> Orifices { get; init; }

    public required ImmutableArray<ControlRow> Controls { get; init; }

    public required ImmutableArray<RelayRow> Relays { get; init; }

    public required ImmutableArray<SourceRow> Sources { get; init; }

    public required ImmutableArray<SwitchRow> Switches { get; init; }

    public required ImmutableArray<ScheduleRow> Schedule { get; init; }

    /// <summary>A network with orifices holds gas; without, it holds liquid against an outside of head 0.</summary>
    public double OutsidePotential => Orifices.Length > 0 ? Atmosphere : 0;

    /// <exception cref="FormatException">The text is not in the format of Data/README.md.</exception>
    public static NetFile Parse(string text)
    {
        NetReader r = new(text);
        (double end, double every) = r.Times();
        return new()
        {
            End = end,
            Every = every,
            Nodes = r.Section("nodes", () => new NodeRow(r.Word(), r.Number(), r.Number())),
            Frictions = r.Section("fric", () => new FrictionRow(r.Index(), r.Index(), r.Number(), r.Number())),
            Heads = r.Section("head", () => new HeadRow(r.Index(), r.Index(), r.Number(), r.Number(), r.Number(), r.Number())),
            Orifices = r.Section("orif", () => new OrificeRow(r.Index(), r.Index(), r.Number(), (OrificeKind)r.Index(), r.Number(), r.Number(), r.Index())),
            Controls = r.Section("ctrl", () => new ControlRow(
                r.Index(), r.Index(), r.Number(), r.Number(), r.Number(), r.Number(), r.Number(), r.Number(), r.Number())),
            Relays = r.Section("relay", () => new RelayRow(r.Index(), r.Index(), r.Index(), r.Number(), r.Number(), r.Number())),
            Sources = r.Section("src", () => new SourceRow(r.Index(), r.Number())),
            Switches = r.Section("hyst", () => new SwitchRow(
                r.Index(), r.Number(), r.Number(), r.Index() != 0, Target(r.Index()), r.Index(), r.Number(), r.Number())),
            Schedule = r.Section("sched", () => new ScheduleRow(r.Number(), (InputKind)r.Index(), r.Index(), r.Number())),
        };
    }

    private static InputKind Target(int kind) => kind == 0 ? InputKind.Source : (InputKind)kind;
}
