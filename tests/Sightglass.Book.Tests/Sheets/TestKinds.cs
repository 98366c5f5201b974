using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Book.Tests.Sheets;

/// <summary>Kinds for tests of the reader: the same names as the fuel slice, sheets of our own.</summary>
internal static class TestKinds
{
    private static readonly KindParameter s_area = new("area", ParameterType.Quantity, Dimension.Area, "Free area.", Minimum: "0 cm^2");

    private static readonly KindParameter s_coefficient =
        new("discharge coefficient", ParameterType.Quantity, Dimension.One, "Share of the ideal flow.", Default: "0.62", Minimum: "0.01", Maximum: "1");

    private static readonly KindFault s_stuck = new("stuck", "Stays where it is.", []);

    public static KindCatalog Catalog { get; } = new([.. Stores(), .. Couplings(), .. Paths(), .. Others()]);

    private static IEnumerable<KindSheet> Stores()
    {
        yield return new()
        {
            Name = "tank",
            Purpose = "Holds liquid with a free surface.",
            Medium = "fuel",
            Role = KindRole.Store,
            Symbol = "tank",
            Parameters =
            [
                new("shape", ParameterType.Choice, Dimension.One, "Shape.", Default: "prismatic", Choices: ["prismatic", "upright cylinder", "lying cylinder", "dip table"]),
                Length("floor area", Dimension.Area),
                Length("length", Dimension.Metre),
                Length("width", Dimension.Metre),
                Length("radius", Dimension.Metre),
                Length("depth", Dimension.Metre),
                new("dip table", ParameterType.Table, Dimension.One, "Volume at each height.", Choices: ["height: length", "volume: volume"]),
                new("vent area", ParameterType.Quantity, Dimension.Area, "Free area of the vent.", Default: "5 cm^2"),
            ],
            Quantities =
            [
                new("volume", Dimension.Volume, "Volume."), new("level", Dimension.Metre, "Level."), new("fill", Dimension.One, "Share of the volume."),
                new("leak flow", Dimension.VolumeFlow, "What runs out."), new("overflow", Dimension.VolumeFlow, "What leaves by the vent."),
                new("spilled", Dimension.Volume, "What has run out."),
            ],
            Faults =
            [
                new("leak", "A hole.",
                [
                    new("diameter", ParameterType.Quantity, Dimension.Metre, "Of the hole.", Required: true, Minimum: "0 mm", Maximum: "200 mm"),
                    new("height", ParameterType.Quantity, Dimension.Metre, "Above the floor.", Default: "0 mm"),
                ]),
            ],
        };
        yield return new()
        {
            Name = "fuel line",
            Purpose = "A short volume between paths.",
            Role = KindRole.Store,
            Parameters = [new("volume", ParameterType.Quantity, Dimension.Volume, "Inside.", Required: true, Minimum: "1 mL")],
            Quantities = [new("pressure", Dimension.Pressure, "Pressure."), new("air", Dimension.One, "Share of air.")],
        };
    }

    /// <summary>What is coupled from one vehicle to the next, and by what.</summary>
    private static IEnumerable<KindSheet> Couplings()
    {
        yield return new() { Name = "plug", Purpose = "Goes on into the next vehicle.", Role = KindRole.Store, CoupledBy = "plug coupling", Faults = [new("blocked", "Some of its holes are shut.", [new("number", ParameterType.Quantity, Dimension.One, "How many.", Default: "1", Minimum: "1", Maximum: "3", IsWhole: true)])] };
        yield return Path("plug coupling", [], ["parted", "coupled"]);
    }

    private static KindParameter Length(string name, Dimension dimension) =>
        new(name, ParameterType.Quantity, dimension, $"The {name}.", Minimum: $"0 {UnitTable.SiOf(dimension).Symbol}");

    private static IEnumerable<KindSheet> Paths()
    {
        yield return Path("orifice", [new("diameter", ParameterType.Quantity, Dimension.Metre, "Of the hole.", Minimum: "0 mm"), s_area, s_coefficient]);
        yield return Path("hand valve", [s_area, s_coefficient], ["closed", "open"]);
        yield return Path("check valve", [s_area, new("opens at", ParameterType.Quantity, Dimension.Pressure, "Opening pressure.", Default: "0 psi")]);
        yield return Path(
            "displacement pump",
            [
                new("flow", ParameterType.Quantity, Dimension.VolumeFlow, "At full speed.", Required: true), new("slip", ParameterType.Quantity, Dimension.One, "Lost.", Default: "5 %"),
                new("relief", ParameterType.Quantity, Dimension.Pressure, "Relief valve."), new("driven by", ParameterType.Item, Dimension.One, "What runs it."),
            ]);
        yield return Path("curve pump", [new("curve", ParameterType.Table, Dimension.One, "Head against flow.", Required: true, Choices: ["flow: volume flow", "head: length"])]);
        yield return Path("filter", [new("flow", ParameterType.Quantity, Dimension.VolumeFlow, "Rated.", Required: true), new("drop", ParameterType.Quantity, Dimension.Pressure, "When clean.", Required: true)]);
        yield return Path("cut-off valve", [s_area, new("tripped by", ParameterType.Items, Dimension.One, "Buttons.")], ["open", "tripped"]);
        yield return Path("fill port", [s_area, new("closes at height", ParameterType.Quantity, Dimension.Metre, "Float.")], ["capped", "open", "filling"]) with { Ports = [new("to", "The tank.")] };
        yield return Path("socket", [new("pins", ParameterType.Pins, Dimension.One, "Its wires.")]);
        yield return Path("drain cock", [s_area], ["closed", "open"]) with { Ports = [new("from", "The tank.")] };
    }

    private static KindSheet Path(string name, KindParameter[] parameters, string[]? positions = null) => new()
    {
        Name = name,
        Purpose = $"A {name}.",
        Medium = "fuel",
        Role = KindRole.Path,
        Parameters = [.. parameters],
        Positions = [.. positions ?? []],
        Faults = [s_stuck],
    };

    private static IEnumerable<KindSheet> Others()
    {
        yield return new()
        {
            Name = "engine",
            Purpose = "Burns fuel.",
            Role = KindRole.Control,
            Ports = [new("from", "The line it draws from.")],
            Positions = ["stopped", "running"],
            Parameters =
            [
                new("throttle", ParameterType.Item, Dimension.One, "The handle."),
                new("consumption", ParameterType.ByPosition, Dimension.VolumeFlow, "By throttle position.", Required: true),
                new("head-end consumption", ParameterType.Quantity, Dimension.VolumeFlow, "For the train."),
                new("stops below", ParameterType.Quantity, Dimension.Pressure, "Least pressure."),
                new("after", ParameterType.Quantity, Dimension.Second, "Dwell.", Default: "5 s"),
            ],
            Quantities = [new("running", Dimension.One, "Whether it runs.", IsCondition: true), new("consumption", Dimension.VolumeFlow, "What it burns.")],
        };
        yield return new() { Name = "handle", Purpose = "A handle.", Role = KindRole.Control };
        yield return new() { Name = "switch", Purpose = "A switch.", Role = KindRole.Control };
        yield return new()
        {
            Name = "push button",
            Purpose = "A button.",
            Role = KindRole.Control,
            Positions = ["normal", "pushed"],
            Parameters = [new("trips", ParameterType.Items, Dimension.One, "Cut-off valves.")],
        };
        yield return new() { Name = "gauge", Purpose = "Shows a formula.", Role = KindRole.Indication, Faults = [s_stuck] };
        yield return new()
        {
            Name = "sight glass",
            Purpose = "Shows the level.",
            Role = KindRole.Indication,
            Parameters =
            [
                new("of", ParameterType.Item, Dimension.One, "The tank.", Required: true), new("bottom", ParameterType.Quantity, Dimension.Metre, "Lower end.", Required: true),
                new("top", ParameterType.Quantity, Dimension.Metre, "Upper end.", Required: true), new("lit", ParameterType.YesNo, Dimension.One, "Whether a lamp stands behind it.", Default: "no"),
            ],
            Faults = [new("dirty", "Cannot be read.", [])],
        };
        yield return new()
        {
            Name = "lamp",
            Purpose = "Is lit or dark.",
            Role = KindRole.Indication,
            Parameters = [new("lit when", ParameterType.Formula, Dimension.One, "Condition.", Required: true)],
        };
    }
}
