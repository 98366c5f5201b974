using System.Collections.Immutable;

namespace Sightglass.Book.Kinds;

/// <summary>
/// What a kind of equipment is, as data: the schema, the parameter tables, the scaffold and the docs page all come from here.
/// How it is built into a network is the plant's business.
/// </summary>
public sealed record KindSheet
{
    /// <summary>The kind's name as written after <c>kind:</c>, such as <c>hand valve</c>.</summary>
    public required string Name { get; init; }

    /// <summary>One sentence: what it is.</summary>
    public required string Purpose { get; init; }

    /// <summary>Several sentences for the docs page: equations with source, validity.</summary>
    public string Details { get; init; } = "";

    /// <summary>Medium it belongs to (<c>fuel</c>, <c>main</c>, <c>brake</c>, <c>power</c>, <c>control</c>, <c>water</c>) or null for anything.</summary>
    public string? Medium { get; init; }

    public KindRole Role { get; init; } = KindRole.Described;

    /// <summary>Whether its ends are wires: it carries current, not a fluid.</summary>
    public bool Conducts { get; init; }

    /// <summary>Whether what it carries is alternating current of three phases: its ends, or what ends at it, are busbars and not single wires.</summary>
    public bool Alternates { get; init; }

    public ImmutableArray<KindParameter> Parameters { get; init; } = [];

    /// <summary>
    /// Fixed port names; a store takes the author's own ports as well. On anything but a store the ports named <c>from</c> and <c>to</c>
    /// are the ends that the author must write; a path that lists none of them must have both. On a path that lists only one
    /// (a drain cock: <c>from</c>) the other may be written or left out.
    /// </summary>
    public ImmutableArray<KindPort> Ports { get; init; } = [];

    /// <summary>Positions a person can put it in, in order; empty for what cannot be operated. A two-position valve has closed, open.</summary>
    public ImmutableArray<string> Positions { get; init; } = [];

    /// <summary>The position it has when the book says nothing; the first where null.</summary>
    public string? UsualPosition { get; init; }

    /// <summary>Whether an item of this kind is seen to be lit or dark.</summary>
    public bool Lights { get; init; }

    /// <summary>True quantities it offers to formulas, as in <c>volume of forward compartment</c>.</summary>
    public ImmutableArray<KindQuantity> Quantities { get; init; } = [];

    public ImmutableArray<KindFault> Faults { get; init; } = [];

    /// <summary>Symbol drawn for it in a system diagram, named after ISO 1219 / 14617 usage: tank, valve, pump, filter, check, pipe, engine, vent, gauge.</summary>
    public string Symbol { get; init; } = "box";

    /// <summary>What an item is that names no kind: in the walk and in texts, not in the physics.</summary>
    public static KindSheet Described { get; } = new() { Name = "described", Purpose = "A piece of equipment that is described but not alive." };

    /// <summary>The kind by which an item of this kind is joined to one of the next vehicle; null for what is not coupled.</summary>
    public string? CoupledBy { get; init; }

    /// <summary>What an item of this kind is called that joins the ends of two vehicles: <c>brake pipe coupling at the rear</c>.</summary>
    public string CoupledAs { get; init; } = "coupling";

    /// <summary>Of what joins two ends: whether what is dangerous at one of them is dangerous to whoever handles it.</summary>
    public bool SharesDangers { get; init; }

    /// <summary>The kind by which two couplings of this kind can be taken for each other; null where that cannot be.</summary>
    public string? CrossedBy { get; init; }

    /// <summary>Whether the author says which positions there are: of a control without its own, and of what is only described.</summary>
    public bool TakesPositions => Positions.Length == 0 && (Role is KindRole.Control or KindRole.Described);

    /// <summary>Whether an item of this kind may have the end <c>from</c> or <c>to</c>.</summary>
    public bool HasEnd(string end) => Role == KindRole.Path || NeedsEnd(end);

    /// <summary>Whether an item of this kind must have the end <c>from</c> or <c>to</c>.</summary>
    public bool NeedsEnd(string end)
    {
        bool listed = Role != KindRole.Store && Ports.Any(p => p.Name is "from" or "to");
        return listed ? Ports.Any(p => p.Name == end) : Role == KindRole.Path;
    }
}
