using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Fuel;

/// <summary>What burns the fuel.</summary>
public sealed partial class EngineKind : KindBuilder
{
    public const string Name = "engine";

    private const string StopsWhile = "stops while";

    public override KindSheet Sheet { get; } = new()
    {
        Name = Name,
        Purpose = "Burns fuel from a line by the position of a throttle and the head-end load, and stops when it is starved.",
        Details = """
            It takes what it needs as long as the line holds liquid under pressure. When the pressure has stayed below what it needs, or air has come instead, for as
            long as its injectors hold out, it stops; a person starts it again. Source: consumption after power and specific consumption (Heywood ch. 2, from memory).
            """,
        Medium = "fuel",
        Role = KindRole.Path,
        Symbol = "engine",
        Positions = ["stopped", "running"],
        Parameters =
        [
            new("consumption", ParameterType.ByPosition, Dimension.VolumeFlow, "By position of the throttle.", Required: true),
            Parameter.Item("throttle", "The control that sets it."),
            Parameter.Of("head-end consumption", Dimension.VolumeFlow, "More at full head-end load.", "0 L/h", "0 L/h", "1000 L/h"),
            Parameter.Item("head-end source", "The three-phase source that it turns: the share of its power that it gives counts as head-end load, besides what a situation says."),
            Parameter.Of("stops below", Dimension.Pressure, "Pressure of its line that it needs.", "15 psi", "0 psi", "1000 psi"),
            Parameter.Of("after", Dimension.Second, "How long it goes on below that.", "3 s", "0.1 s", "10 min"),
            new(StopsWhile, ParameterType.Formula, Dimension.One, "What else stops it and keeps it from starting, a condition: `picked up of low water button`."),
            Parameter.Of("density", Dimension.Density, "Of the fuel.", "840 kg/m^3", "500 kg/m^3", "2000 kg/m^3"),
        ],
        Quantities =
        [
            new("running", Dimension.One, "It turns by its own power.", IsCondition: true),
            new("consumption", Dimension.VolumeFlow, "What it burns now."),
            new("want", Dimension.One, "How far it lacks fuel, 0 to 1: pressure too low or too much air for too long. It stops at 0.63."),
            new("burnt", Dimension.Volume, "What it burned since the start."),
        ],
        Faults = [new("seized", "It stops, and cannot be turned.", [])],
    };
}
