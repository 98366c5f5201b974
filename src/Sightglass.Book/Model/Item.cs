using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Kinds;

namespace Sightglass.Book.Model;

/// <summary>A piece of equipment.</summary>
public sealed record Item
{
    public required string Name { get; init; }

    public required Span Span { get; init; }

    public required KindSheet Kind { get; init; }

    /// <summary>Its kind was written but is not known, so that its keys could not be checked.</summary>
    internal bool IsKindUnknown { get; init; }

    /// <summary>Whether it has everything that its kind needs.</summary>
    internal bool IsWhole => Kind.Parameters.All(p => !p.Required || Parameters.ContainsKey(p.Name));

    /// <summary>The vehicle it belongs to.</summary>
    public Vehicle Vehicle { get; init; } = Vehicle.Alone;

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

    /// <summary>What somebody may be asked in front of it.</summary>
    public ImmutableArray<Question> Questions { get; init; } = [];

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

    /// <summary>Whether everybody who is taught may try it, and it can be put back as it was.</summary>
    public bool Hands { get; init; }

    public Reading? Reading { get; init; }

    /// <summary>Items that it holds: a panel its breakers, an axle its two boxes. What happens if it fails is what happens if they do.</summary>
    public ImmutableArray<string> Holds { get; init; } = [];

    /// <summary>What happens if it fails, told by the author where nothing of it is computed.</summary>
    public string IfItFails { get; init; } = "";

    /// <summary>Free links to other items in the reading panel.</summary>
    public ImmutableArray<string> ConnectsTo { get; init; } = [];
}
