using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

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

    /// <summary>What quantities of published rules are on this machine.</summary>
    public ImmutableSortedDictionary<string, Measure> Measures { get; init; } = ImmutableSortedDictionary<string, Measure>.Empty;

    public ImmutableSortedDictionary<string, Role> Roles { get; init; } = ImmutableSortedDictionary<string, Role>.Empty;

    public ImmutableSortedDictionary<string, RoadNumber> RoadNumbers { get; init; } = ImmutableSortedDictionary<string, RoadNumber>.Empty;

    public ImmutableSortedDictionary<string, CouplingEnd> Ends { get; init; } = ImmutableSortedDictionary<string, CouplingEnd>.Empty;

    public ImmutableArray<Silhouette> Silhouettes { get; init; } = [];

    /// <summary>Texts of the card files in the folder, unread: the card language reads them.</summary>
    public ImmutableArray<SourceText> CardTexts { get; init; } = [];

    /// <summary>Names of the card files, without folder and ending.</summary>
    public IEnumerable<string> CardNames => CardTexts.Select(t => Path.GetFileNameWithoutExtension(t.Path));

    public ImmutableSortedDictionary<string, Situation> Situations { get; init; } = ImmutableSortedDictionary<string, Situation>.Empty;

    /// <summary>The road number these items are for, or null before <c>For</c> was asked.</summary>
    public string? RoadNumberInUse { get; init; }

    /// <summary>The items as written, so that road numbers can be read over them.</summary>
    internal ItemBodies? Bodies { get; init; }

    /// <summary>The book with the items of one road number: its modifications applied in the order of their dates.</summary>
    /// <exception cref="ArgumentException">The book has no such road number.</exception>
    public ClassBook For(string roadNumber)
    {
        ArgumentNullException.ThrowIfNull(roadNumber);
        return !RoadNumbers.TryGetValue(roadNumber, out RoadNumber? number)
            ? throw new ArgumentException($"The book has no road number `{roadNumber}`.", nameof(roadNumber))
            : this with
            {
                Items = Bodies is null ? Items : Bodies.ReadFor(number, new ReadContext(new Findings([], YamlLimits.Default), Bodies.Kinds), new(YamlLimits.Default, 1)).Items,
                RoadNumberInUse = roadNumber,
            };
    }
}
