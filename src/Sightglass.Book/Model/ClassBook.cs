using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Book.Model;

/// <summary>A class book, read and checked. Immutable; every part knows where it stands in the author's files.</summary>
public sealed record ClassBook
{
    public required string Title { get; init; }

    public string Edition { get; init; } = "1";

    /// <summary>Shown on every page and report: for the demo, that all of it is invented.</summary>
    public string Notice { get; init; } = "";

    public string Railroad { get; init; } = "";

    /// <summary>Length over the coupler pulling faces, metres; x runs from 0 at the front face.</summary>
    public double Length { get; init; } = 20;

    /// <summary>Width, metres; y runs from −Width/2 (left) to +Width/2 (right, seen facing forward).</summary>
    public double Width { get; init; } = 3.1;

    /// <summary>Side on which the walk starts.</summary>
    public Side WalkStart { get; init; } = Side.Right;

    /// <summary>Units in which quantities are shown: dimension → unit.</summary>
    public ImmutableDictionary<Dimension, Unit> ShownIn { get; init; } = ImmutableDictionary<Dimension, Unit>.Empty;

    public ImmutableSortedDictionary<string, Place> Places { get; init; } = ImmutableSortedDictionary<string, Place>.Empty;

    public ImmutableArray<Leg> Legs { get; init; } = [];

    /// <summary>By name, in ordinal order of names: the order in which everything is built.</summary>
    public ImmutableSortedDictionary<string, Item> Items { get; init; } = ImmutableSortedDictionary<string, Item>.Empty;

    public ImmutableSortedDictionary<string, SystemSheet> Systems { get; init; } = ImmutableSortedDictionary<string, SystemSheet>.Empty;

    public ImmutableSortedDictionary<string, Fact> Facts { get; init; } = ImmutableSortedDictionary<string, Fact>.Empty;

    public ImmutableSortedDictionary<string, Sign> Signs { get; init; } = ImmutableSortedDictionary<string, Sign>.Empty;

    public ImmutableSortedDictionary<string, Hazard> Hazards { get; init; } = ImmutableSortedDictionary<string, Hazard>.Empty;

    public ImmutableSortedDictionary<string, Protection> Protections { get; init; } = ImmutableSortedDictionary<string, Protection>.Empty;

    public ImmutableSortedDictionary<string, Role> Roles { get; init; } = ImmutableSortedDictionary<string, Role>.Empty;

    public ImmutableSortedDictionary<string, RoadNumber> RoadNumbers { get; init; } = ImmutableSortedDictionary<string, RoadNumber>.Empty;

    public ImmutableSortedDictionary<string, CouplingEnd> Ends { get; init; } = ImmutableSortedDictionary<string, CouplingEnd>.Empty;

    public ImmutableArray<Silhouette> Silhouettes { get; init; } = [];

    /// <summary>Texts of the card files in the folder, unread: the card language reads them.</summary>
    public ImmutableArray<SourceText> CardTexts { get; init; } = [];

    public ImmutableSortedDictionary<string, Situation> Situations { get; init; } = ImmutableSortedDictionary<string, Situation>.Empty;

    /// <summary>The road number these items are for, or null before <c>For</c> was asked.</summary>
    public string? RoadNumberInUse { get; init; }
}

public enum Side
{
    Right,
    Rear,
    Left,
    Front,
}

/// <summary>A position in the class's axes, metres: x from the front pulling face rearward, y to the right facing forward, z above rail.</summary>
public readonly record struct Point3(double X, double Y, double Z);

/// <summary>Somewhere a person can stand.</summary>
/// <param name="OnGround">Ground places are joined along the outline automatically; others need legs.</param>
public sealed record Place(string Name, Span Span, Point3 Position, bool OnGround, string Text);

/// <summary>A way between two places, with the time it takes at an ordinary pace.</summary>
public sealed record Leg(string From, string To, Span Span, double Seconds, string By);

/// <summary>Depth of text: what to know, to operate, to repair.</summary>
public sealed record DepthTexts(string Know, string Operate, string Repair);

/// <summary>Who may operate a control, on whose permission, and who must be told.</summary>
public sealed record Authority(ImmutableArray<string> Who, string? Permission, ImmutableArray<string> Told);

/// <summary>A caution with its signal word.</summary>
public sealed record Caution(SignalWord Word, string Text, Span Span);

/// <summary>Signal words in the sense of ANSI Z535 (from memory).</summary>
public enum SignalWord
{
    Notice,
    Caution,
    Warning,
    Danger,
}

/// <summary>A piece of equipment.</summary>
public sealed record Item
{
    public required string Name { get; init; }

    public required Span Span { get; init; }

    public required KindSheet Kind { get; init; }

    /// <summary>Name of the system it belongs to, or null.</summary>
    public string? System { get; init; }

    /// <summary>Where it is, or null for what has no place (a pipe inside).</summary>
    public Point3? Position { get; init; }

    /// <summary>Places from which it can be operated and read, the first being its own.</summary>
    public ImmutableArray<string> Places { get; init; } = [];

    /// <summary>Short words for a drawing; the name where the author gives none.</summary>
    public string Label { get; init; } = "";

    public string Purpose { get; init; } = "";

    public string Normal { get; init; } = "";

    public ImmutableArray<Caution> Cautions { get; init; } = [];

    public DepthTexts Texts { get; init; } = new("", "", "");

    public string? Photo { get; init; }

    /// <summary>Parameters by name, checked against the kind sheet, defaults filled in.</summary>
    public ImmutableSortedDictionary<string, ParameterValue> Parameters { get; init; } = ImmutableSortedDictionary<string, ParameterValue>.Empty;

    /// <summary>A store's own ports: name → where.</summary>
    public ImmutableSortedDictionary<string, Port> Ports { get; init; } = ImmutableSortedDictionary<string, Port>.Empty;

    /// <summary>A path's ends.</summary>
    public PortReference? From { get; init; }

    public PortReference? To { get; init; }

    /// <summary>Positions it can be put in (from the kind, or the author's own); empty for what is not operated.</summary>
    public ImmutableArray<string> Positions { get; init; } = [];

    /// <summary>The position it has when nothing else is said.</summary>
    public string? UsualPosition { get; init; }

    public Authority? Authority { get; init; }

    /// <summary>Seconds that operating takes.</summary>
    public double OperateSeconds { get; init; } = 2;

    public Reading? Reading { get; init; }

    /// <summary>Free links to other items in the reading panel.</summary>
    public ImmutableArray<string> ConnectsTo { get; init; } = [];
}

/// <summary>A point of a store where a path ends: height above the store's floor and place along it, metres.</summary>
/// <param name="Height">Above the floor of the store.</param>
/// <param name="X">Class axes, or null for the middle of the store.</param>
/// <param name="Y">Class axes, or null for the middle of the store.</param>
public sealed record Port(string Name, Span Span, double Height, double? X, double? Y);

/// <summary><c>forward compartment, supply pickup</c>; <c>outside</c> is the outside.</summary>
public sealed record PortReference(string Item, string? Port, Span Span)
{
    public const string Outside = "outside";
}

/// <summary>What an indication shows.</summary>
public sealed record Reading
{
    /// <summary>The formula as written, or null where the kind supplies it (a sight glass).</summary>
    public string? Formula { get; init; }

    public required Span Span { get; init; }

    /// <summary>Unit of the scale; readings are shown and compared in it.</summary>
    public required Unit Unit { get; init; }

    /// <summary>SI.</summary>
    public double Minimum { get; init; }

    /// <summary>SI.</summary>
    public double Maximum { get; init; }

    /// <summary>SI; the least step the instrument shows.</summary>
    public double Resolution { get; init; }

    /// <summary>SI; the grey bar on the scale.</summary>
    public double? NormalFrom { get; init; }

    public double? NormalTo { get; init; }

    /// <summary>Words for stretches of the scale, such as low, room, full: name → from, to (SI, inclusive).</summary>
    public ImmutableSortedDictionary<string, (double From, double To)> Words { get; init; } =
        ImmutableSortedDictionary<string, (double From, double To)>.Empty;
}

/// <summary>A parameter as given: the SI number, the text, the names, or the table rows.</summary>
public sealed record ParameterValue(Span Span)
{
    public double Number { get; init; }

    public Unit? Unit { get; init; }

    public string Text { get; init; } = "";

    public ImmutableArray<string> Names { get; init; } = [];

    /// <summary>Rows of a table, SI.</summary>
    public ImmutableArray<ImmutableArray<double>> Rows { get; init; } = [];

    /// <summary>For position maps, SI.</summary>
    public ImmutableSortedDictionary<string, double> ByPosition { get; init; } = ImmutableSortedDictionary<string, double>.Empty;
}

/// <summary>A running system: fuel, air, …</summary>
public sealed record SystemSheet(string Name, Span Span, string Medium, bool Alive, string Text);

/// <summary>A named truth declared by the book; only for must-never, done-when, hazards and evaluation.</summary>
public sealed record Fact(string Name, Span Span, string Formula, Span FormulaSpan, string Text);

/// <summary>Something that can be seen, heard or smelled from some places when a condition holds.</summary>
/// <param name="Name">The sentence as cards say it: <c>fuel is seen at the foot of the aft compartment</c>.</param>
public sealed record Sign(string Name, Span Span, string Sense, string Formula, Span FormulaSpan, ImmutableArray<string> Places);

/// <summary>A danger that belongs to places, the condition under which it bites, and its caution.</summary>
public sealed record Hazard(string Name, Span Span, ImmutableArray<string> Places, ImmutableArray<string> Items, string? Formula, Span FormulaSpan, string? Protection, Caution Caution);

/// <summary>A permission to be in a dangerous place, with its owner.</summary>
public sealed record Protection(string Name, Span Span, string AskedOf, string Text);

/// <summary>A role a person can have.</summary>
/// <remarks>Speed in m/s at an ordinary walk, reaction in s.</remarks>
public sealed record Role(string Name, Span Span, double WalkingSpeed, double ReactionSeconds, string Text, ImmutableArray<string> Reaches);

/// <summary>One vehicle of the class with what differs on it.</summary>
public sealed record RoadNumber(string Number, Span Span, ImmutableArray<Modification> Modifications);

/// <summary>A dated change to items, applied over the class.</summary>
public sealed record Modification(string Name, Span Span, DateOnly? Since, string Text, ImmutableArray<string> ChangedItems);

/// <summary>One end of the vehicle: which way it faces and what can be coupled there.</summary>
public sealed record CouplingEnd(string Name, Span Span, Side Faces, ImmutableArray<string> Items);

/// <summary>Outline of one side in metres: closed or open polylines with the weight they are drawn in.</summary>
public sealed record Silhouette(Side Side, Span Span, ImmutableArray<Shape> Shapes);

/// <param name="Style">outline, part, detail, tint, glass, solid, or lettering.</param>
/// <param name="Path">SVG path data in metres: on right and left sides x as in the class's axes (from the front), on ends y; up is z above rail.</param>
/// <param name="Text">For lettering.</param>
public sealed record Shape(string Style, string Path, string? Text = null);

/// <summary>Where a world starts: each value fixed or a range.</summary>
public sealed record Situation
{
    public required string Name { get; init; }

    public required Span Span { get; init; }

    public string Text { get; init; } = "";

    /// <summary>Road number, or null for any of the book's.</summary>
    public string? RoadNumber { get; init; }

    /// <summary>Who is there: role → place (fixed or one of several).</summary>
    public ImmutableArray<PersonStart> People { get; init; } = [];

    /// <summary>Starting values: item or quantity name → value.</summary>
    public ImmutableArray<StartValue> Start { get; init; } = [];

    public ImmutableArray<FaultStart> Faults { get; init; } = [];
}

public sealed record PersonStart(string Role, ImmutableArray<string> Places, Span Span);

/// <summary>
/// One starting value. A number is drawn uniformly between <see cref="From"/> and <see cref="To"/> (SI, equal when fixed);
/// a choice is drawn from <see cref="OneOf"/>.
/// </summary>
public sealed record StartValue(string Name, Span Span)
{
    public double From { get; init; }

    public double To { get; init; }

    public Unit? Unit { get; init; }

    public ImmutableArray<string> OneOf { get; init; } = [];
}

/// <summary>A fault in a situation: on one of several items, from a moment, with values.</summary>
public sealed record FaultStart(string Fault, ImmutableArray<string> Items, Span Span)
{
    /// <summary>Seconds after the start, drawn between the two.</summary>
    public double AfterFrom { get; init; }

    public double AfterTo { get; init; }

    /// <summary>Chance that it is there at all, 0…1.</summary>
    public double Chance { get; init; } = 1;

    public ImmutableArray<StartValue> Values { get; init; } = [];
}
