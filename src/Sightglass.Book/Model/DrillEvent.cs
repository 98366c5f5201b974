using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>Something that happens once in a drill: when all that is said of its moment has come about, what it does.</summary>
/// <param name="Span">Where it stands.</param>
public sealed record DrillEvent(Span Span)
{
    /// <summary>Seconds from the start, or from the moment that is said otherwise.</summary>
    public double After { get; init; }

    /// <summary>When this has come about; null: the start.</summary>
    public FormulaText? When { get; init; }

    /// <summary>When the trainee has come to this place; null: anywhere.</summary>
    public string? At { get; init; }

    /// <summary>When the trainee has put a hand to this control; null: to any or none.</summary>
    public string? Operated { get; init; }

    /// <summary>A control, or a quantity of the surroundings, that is set; null where none is.</summary>
    public string? Sets { get; init; }

    /// <summary>The position, or the value as it was written.</summary>
    public string To { get; init; } = "";

    /// <summary>SI; for a quantity of the surroundings.</summary>
    public double ToValue { get; init; }

    /// <summary>A fault that is put in, or null.</summary>
    public string? Fault { get; init; }

    /// <summary>Whether the fault is taken out instead.</summary>
    public bool TakesOut { get; init; }

    /// <summary>The item that it is of.</summary>
    public string On { get; init; } = "";

    /// <summary>Values of the fault by name, as they were written; those that are not named are as usual.</summary>
    public ImmutableArray<(string Name, FormulaText Value)> Values { get; init; } = [];

    /// <summary>What is said to the trainee, or empty.</summary>
    public string Says { get; init; } = "";

    /// <summary>The role that says it.</summary>
    public string? By { get; init; }
}
