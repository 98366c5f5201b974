using System.Collections.Immutable;

namespace Sightglass.Drawing.Diagram;

/// <summary>One thing in a diagram.</summary>
/// <param name="Id">Its name in the book.</param>
/// <param name="Label">Words drawn.</param>
public sealed record DiagramNode(string Id, DiagramRole Role, DiagramSymbol Symbol, string Label)
{
    /// <summary>Name of the node that a path or machine takes from; null is the outside.</summary>
    public string? From { get; init; }

    /// <summary>Name of the node that a path or machine gives to; null is the outside, or nothing for a machine.</summary>
    public string? To { get; init; }

    /// <summary>Nodes that a gauge shows, a glass stands at, a control acts on.</summary>
    public ImmutableArray<string> Of { get; init; } = [];

    /// <summary>A second line in small print: a gauge's formula.</summary>
    public string Detail { get; init; } = "";

    /// <summary>Order from left to right among equals: metres from the front.</summary>
    public double Order { get; init; }

    /// <summary>Medium of its own system, where that has one: a drawing of one system may show a line of another.</summary>
    public string Medium { get; init; } = "";

    /// <summary>Name of the kind, for the words at the end of a row.</summary>
    public string Kind { get; init; } = "";

    /// <summary>Whether it is operated with two positions: open and closed.</summary>
    public bool IsSwitch { get; init; }

    /// <summary>Whether it can be operated at all.</summary>
    public bool IsOperated { get; init; }

    /// <summary>Whether it is a closed vessel that a gas fills: it has a pressure, not a level.</summary>
    public bool IsClosed => Symbol is DiagramSymbol.Reservoir or DiagramSymbol.Cylinder;

    /// <summary>Whether a line is more than pipe between two paths: something senses it, as control valves do a brake pipe. It is drawn as a header with its name.</summary>
    public bool IsHeader { get; init; }

    /// <summary>The vehicle it belongs to, counted from the head of the train; 0 for a machine alone.</summary>
    public int Vehicle { get; init; }

    /// <summary>What the vehicle is called in names of its parts: <c>car 3</c>; empty for the machine itself.</summary>
    public string VehicleName { get; init; } = "";

    /// <summary>Its name without that of its vehicle: the same for like parts of like vehicles.</summary>
    public string Own => VehicleName.Length == 0 ? Id : Id.Replace(VehicleName, "#", StringComparison.Ordinal);

    /// <summary>Whether it is what is coupled to the next vehicle: a hose. Lines between two of them go through the vehicle from end to end.</summary>
    public bool IsEnd { get; init; }

    /// <summary>Whether it is where a line begins or ends by itself: nothing goes on from it to the outside.</summary>
    public bool Ends => Symbol is DiagramSymbol.Source or DiagramSymbol.Load;

    /// <summary>What a path feels without taking anything from it: the word of its kind for that, such as <c>follows</c>, and the line or tank.</summary>
    public ImmutableArray<(string Word, string Node)> Feels { get; init; } = [];

    /// <summary>Whether a tank breathes through a vent.</summary>
    public bool HasVent { get; init; }
}
