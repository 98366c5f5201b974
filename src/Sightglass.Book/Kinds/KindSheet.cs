using System.Collections.Immutable;
using Sightglass.Basics.Quantities;

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

    public ImmutableArray<KindParameter> Parameters { get; init; } = [];

    /// <summary>Fixed port names; a store takes the author's own ports as well.</summary>
    public ImmutableArray<KindPort> Ports { get; init; } = [];

    /// <summary>Positions a person can put it in, in order; empty for what cannot be operated. A two-position valve has closed, open.</summary>
    public ImmutableArray<string> Positions { get; init; } = [];

    /// <summary>True quantities it offers to formulas, as in <c>volume of forward compartment</c>.</summary>
    public ImmutableArray<KindQuantity> Quantities { get; init; } = [];

    public ImmutableArray<KindFault> Faults { get; init; } = [];

    /// <summary>Symbol drawn for it in a system diagram, named after ISO 1219 / 14617 usage: tank, valve, pump, filter, check, pipe, engine, vent, gauge.</summary>
    public string Symbol { get; init; } = "box";
}

/// <summary>What part a kind plays in a network.</summary>
public enum KindRole
{
    /// <summary>Only described: in the walk and in texts, not in the physics.</summary>
    Described,

    /// <summary>Holds an amount.</summary>
    Store,

    /// <summary>Joins two stores (<c>from</c>, <c>to</c>).</summary>
    Path,

    /// <summary>Shows a formula of the true state.</summary>
    Indication,

    /// <summary>Can be operated and acts on other items by name, such as a throttle handle or an emergency cut-off.</summary>
    Control,
}

/// <summary>One parameter of a kind.</summary>
/// <param name="Name">As written in the book, lower case words.</param>
/// <param name="Type">What may be written.</param>
/// <param name="Dimension">For quantities.</param>
/// <param name="Doc">One sentence.</param>
/// <param name="Default">As written, such as <c>0.62</c> or <c>20 mm</c>; null when required or truly optional (see <paramref name="Required"/>).</param>
/// <param name="Minimum">As written, inclusive.</param>
/// <param name="Maximum">As written, inclusive.</param>
/// <param name="Choices">For <see cref="ParameterType.Choice"/>.</param>
public sealed record KindParameter(
    string Name,
    ParameterType Type,
    Dimension Dimension,
    string Doc,
    bool Required = false,
    string? Default = null,
    string? Minimum = null,
    string? Maximum = null,
    ImmutableArray<string> Choices = default);

public enum ParameterType
{
    /// <summary>A number with a unit.</summary>
    Quantity,

    /// <summary>Plain text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>yes or no.</summary>
    YesNo,

    /// <summary>The name of an item.</summary>
    Item,

    /// <summary>A list of item names.</summary>
    Items,

    /// <summary>A formula with the parameter's dimension.</summary>
    Formula,

    /// <summary>Rows of quantities: a dip table (height, volume) or a curve; column dimensions in <see cref="KindParameter.Choices"/> as <c>height: length</c>.</summary>
    Table,

    /// <summary>A map from position names to quantities, such as consumption by throttle position.</summary>
    ByPosition,
}

public sealed record KindPort(string Name, string Doc);

public sealed record KindQuantity(string Name, Dimension Dimension, string Doc, bool IsCondition = false);

/// <summary>A fault a kind can have.</summary>
/// <param name="Name">As written, such as <c>leak</c>, <c>stuck</c>, <c>bias</c>.</param>
/// <param name="Parameters">What to say with it: size, height, …</param>
public sealed record KindFault(string Name, string Doc, ImmutableArray<KindParameter> Parameters);
