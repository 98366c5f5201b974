using System.Collections.Immutable;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Diagram;

/// <summary>What a diagram shows at one moment, by the names of the nodes. What is not given is drawn empty, open and still.</summary>
public sealed record DiagramState
{
    public static readonly DiagramState Still = new();

    /// <summary>What stands as it usually does, and nothing moves.</summary>
    public static DiagramState Usual(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return Still with
        {
            ShowTruth = false,
            Openings = book.Items.Values.Where(i => i.UsualPosition is not null && !i.Positions.IsEmpty && (i.Kind.Role == KindRole.Path || (i.Kind.Role == KindRole.Control && i.Positions.Contains("open"))))
                .ToImmutableDictionary(i => i.Name, i => (i.Kind.Role == KindRole.Path ? i.Positions.IndexOf(i.UsualPosition!) > 0 : i.UsualPosition == "open") ? 1.0 : 0),
        };
    }

    /// <summary>Hidden truth: how full each tank is, 0…1.</summary>
    public ImmutableDictionary<string, double> Levels { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Hidden truth: the amount in each tank, the pressure in each closed vessel, the temperature of what is warm all through, as written.</summary>
    public ImmutableDictionary<string, string> Amounts { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>How far each path is open, 0…1; of a control that is opened and shut, whether it is open.</summary>
    public ImmutableDictionary<string, double> Openings { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Flow of each path in its own direction, and what each machine uses, in any one unit.</summary>
    public ImmutableDictionary<string, double> Flows { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Flows smaller than this stand still. Default 1e-7, for m³/s.</summary>
    public double StillBelow { get; init; } = 1e-7;

    public ImmutableDictionary<string, DiagramReading> Readings { get; init; } = ImmutableDictionary<string, DiagramReading>.Empty;

    /// <summary>Leaks by the tank that has them.</summary>
    public ImmutableDictionary<string, DiagramLeak> Leaks { get; init; } = ImmutableDictionary<string, DiagramLeak>.Empty;

    public ImmutableDictionary<string, DiagramMachine> Machines { get; init; } = ImmutableDictionary<string, DiagramMachine>.Empty;

    /// <summary>Controls that are in another than their usual position.</summary>
    public ImmutableHashSet<string> Moved { get; init; } = [];

    /// <summary>Whether hidden truth is shown.</summary>
    public bool ShowTruth { get; init; } = true;
}
