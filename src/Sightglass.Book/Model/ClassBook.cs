using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;
using Sightglass.Book.Language;
using Sightglass.Book.Readers;
using Sightglass.Book.Trains;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Model;

/// <summary>A class book, read and checked. Immutable; every part knows where it stands in the author's files.</summary>
public sealed record ClassBook
{
    // Made when they are first asked for, and anew in a copy that holds others.
    private IReadOnlyList<Item>? _items;
    private IReadOnlyList<Place>? _places;
    private IReadOnlyList<Hazard>? _hazards;
    private IReadOnlyList<Fact>? _facts;

    public required string Title { get; init; }

    public string Edition { get; init; } = "1";

    /// <summary>Shown on every page and report: for the demo, that all of it is invented.</summary>
    public string Notice { get; init; } = "";

    /// <summary>What a class of cars is; empty for the machine of the book.</summary>
    public string Text { get; init; } = "";

    public string Railroad { get; init; } = "";

    /// <summary>x of the foremost coupler pulling face, metres: 0 for a machine alone, less for what is coupled before it.</summary>
    public double Front { get; init; }

    /// <summary>Length over the outermost coupler pulling faces, metres; x runs from <see cref="Front"/> to Front + Length.</summary>
    public double Length { get; init; } = 20;

    /// <summary>Width, metres; y runs from −Width/2 (left) to +Width/2 (right, seen facing forward).</summary>
    public double Width { get; init; } = 3.1;

    /// <summary>The situation in which the machine is in service and nothing is wrong; null where the author names none.</summary>
    public string? InService { get; init; }

    /// <summary>How a train is made up; null where the author does not say it, and for cars.</summary>
    public MakingUp? MakingUp { get; init; }

    /// <summary>Side on which the walk starts.</summary>
    public Side WalkStart { get; init; } = Side.Right;

    /// <summary>Units in which quantities are shown: dimension → unit.</summary>
    public ImmutableDictionary<Dimension, Unit> ShownIn { get; init; } = ImmutableDictionary<Dimension, Unit>.Empty;

    public ImmutableSortedDictionary<string, Place> Places
    {
        get;
        init => (field, _places) = (value, null);
    } = ImmutableSortedDictionary<string, Place>.Empty;

    public ImmutableArray<Leg> Legs { get; init; } = [];

    /// <summary>By name, in ordinal order of names: the order in which everything is built.</summary>
    public ImmutableSortedDictionary<string, Item> Items
    {
        get;
        init => (field, _items) = (value, null);
    } = ImmutableSortedDictionary<string, Item>.Empty;

    public ImmutableSortedDictionary<string, SystemSheet> Systems { get; init; } = ImmutableSortedDictionary<string, SystemSheet>.Empty;

    public ImmutableSortedDictionary<string, Fact> Facts
    {
        get;
        init => (field, _facts) = (value, null);
    } = ImmutableSortedDictionary<string, Fact>.Empty;

    public ImmutableSortedDictionary<string, Sign> Signs { get; init; } = ImmutableSortedDictionary<string, Sign>.Empty;

    public ImmutableSortedDictionary<string, Hazard> Hazards
    {
        get;
        init => (field, _hazards) = (value, null);
    } = ImmutableSortedDictionary<string, Hazard>.Empty;

    public ImmutableSortedDictionary<string, Protection> Protections { get; init; } = ImmutableSortedDictionary<string, Protection>.Empty;

    /// <summary>What quantities of published rules are on this machine.</summary>
    public ImmutableSortedDictionary<string, Measure> Measures { get; init; } = ImmutableSortedDictionary<string, Measure>.Empty;

    /// <summary>Questions about what will happen, to bet on.</summary>
    public ImmutableSortedDictionary<string, Bet> Bets { get; init; } = ImmutableSortedDictionary<string, Bet>.Empty;

    /// <summary>Situations for a person to work in.</summary>
    public ImmutableSortedDictionary<string, Drill> Drills { get; init; } = ImmutableSortedDictionary<string, Drill>.Empty;

    /// <summary>What does not come about, and is looked into.</summary>
    public ImmutableSortedDictionary<string, Search> Searches { get; init; } = ImmutableSortedDictionary<string, Search>.Empty;

    /// <summary>Lines that trains run over.</summary>
    public ImmutableSortedDictionary<string, Route> Routes { get; init; } = ImmutableSortedDictionary<string, Route>.Empty;

    /// <summary>How it runs; null where nothing is said of it.</summary>
    public Running? Running { get; init; }

    /// <summary>What people bring with them from older machines.</summary>
    public ImmutableSortedDictionary<string, Habit> Habits { get; init; } = ImmutableSortedDictionary<string, Habit>.Empty;

    /// <summary>Pictures of the machine, each with where items are in it.</summary>
    public ImmutableSortedDictionary<string, Picture> Pictures { get; init; } = ImmutableSortedDictionary<string, Picture>.Empty;

    /// <summary>Pictures in which an item is, those of this road number alone first; its own photo among them.</summary>
    public IEnumerable<Picture> PicturesOf(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        IEnumerable<Picture> marked = Pictures.Values.Where(p => p.IsOf(RoadNumberInUse) && p.Marks.Any(m => m.Item == item.Name));
        IEnumerable<Picture> own = item.Photo is { } photo ? [new($"photo of {item.Name}", item.Span, photo, $"{(item.Label.Length > 0 ? item.Label : item.Name)}, as it looks")] : [];
        return own.Concat(marked).OrderBy(p => p.RoadNumbers.IsEmpty).ThenBy(p => p.Span);
    }

    /// <summary>Pictures of what is seen from a place, those of this road number alone first.</summary>
    public IEnumerable<Picture> PicturesAt(string place) => Pictures.Values.Where(p => p.Place == place && p.IsOf(RoadNumberInUse)).OrderBy(p => p.RoadNumbers.IsEmpty).ThenBy(p => p.Span);

    /// <summary>Walks for a purpose.</summary>
    public ImmutableSortedDictionary<string, PlannedWalk> Walks { get; init; } = ImmutableSortedDictionary<string, PlannedWalk>.Empty;

    public ImmutableSortedDictionary<string, Role> Roles { get; init; } = ImmutableSortedDictionary<string, Role>.Empty;

    public ImmutableSortedDictionary<string, RoadNumber> RoadNumbers { get; init; } = ImmutableSortedDictionary<string, RoadNumber>.Empty;

    public ImmutableSortedDictionary<string, CouplingEnd> Ends { get; init; } = ImmutableSortedDictionary<string, CouplingEnd>.Empty;

    public ImmutableArray<Silhouette> Silhouettes { get; init; } = [];

    /// <summary>Texts of the card files in the folder, unread: the card language reads them.</summary>
    public ImmutableArray<SourceText> CardTexts { get; init; } = [];

    /// <summary>What it says in other languages, by their codes; empty until they are read (<see cref="WordsReader"/>).</summary>
    public ImmutableSortedDictionary<string, BookWords> Languages { get; init; } = ImmutableSortedDictionary<string, BookWords>.Empty;

    /// <summary>A language of the program with what this book says in it.</summary>
    public Tongue TongueOf(string code) => Languages.GetValueOrDefault(code)?.Tongue ?? Tongue.Find(code) ?? Tongue.English;

    /// <summary>The book with its cards in a language; those that it lacks stay as they are.</summary>
    public ClassBook In(Tongue tongue)
    {
        ArgumentNullException.ThrowIfNull(tongue);
        return Languages.GetValueOrDefault(tongue.Code) is { } words ? this with { CardTexts = [.. CardTexts.Select(t => words.CardOf(Path.GetFileNameWithoutExtension(t.Path)) ?? t)] } : this;
    }

    /// <summary>Names of the card files, without folder and ending.</summary>
    public IEnumerable<string> CardNames => CardTexts.Select(t => Path.GetFileNameWithoutExtension(t.Path));

    /// <summary>What stood on machines over time: states that situations draw from.</summary>
    public ImmutableSortedDictionary<string, Recording> Recordings { get; init; } = ImmutableSortedDictionary<string, Recording>.Empty;

    public ImmutableSortedDictionary<string, Situation> Situations { get; init; } = ImmutableSortedDictionary<string, Situation>.Empty;

    /// <summary>The classes of cars that trains are made of, each with places, items and ends of its own; roles, protections and systems are the book's.</summary>
    public ImmutableSortedDictionary<string, ClassBook> Cars { get; init; } = ImmutableSortedDictionary<string, ClassBook>.Empty;

    public ImmutableSortedDictionary<string, Train> Trains { get; init; } = ImmutableSortedDictionary<string, Train>.Empty;

    /// <summary>The vehicles of the train in their order; only the machine where it is coupled to nothing.</summary>
    public ImmutableArray<Vehicle> Vehicles { get; init; } = [Vehicle.Alone];

    /// <summary>The road number these items are for, or null before <c>For</c> was asked.</summary>
    public string? RoadNumberInUse { get; init; }

    /// <summary>The train that this is the whole of, or null for a machine alone.</summary>
    public string? TrainInUse { get; init; }

    /// <summary>The class of cars that this describes, or null for the machine of the book.</summary>
    public string? CarClass { get; init; }

    /// <summary>What describes a vehicle of it: its class of cars, or this book for a machine.</summary>
    public ClassBook ClassOf(Vehicle vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return Cars.GetValueOrDefault(vehicle.Class, this);
    }

    /// <summary>Items in the order of vehicles and files: the order in which everything is built, so that a name changed everywhere changes no bit of a result.</summary>
    public IReadOnlyList<Item> ItemsInOrder => _items ??= [.. Items.Values.OrderBy(i => i.Vehicle.Index).ThenBy(i => i.Span)];

    /// <summary>Places in the order of vehicles and files.</summary>
    public IReadOnlyList<Place> PlacesInOrder => _places ??= [.. Places.Values.OrderBy(p => p.Vehicle.Index).ThenBy(p => p.Span)];

    /// <summary>Hazards in the order of vehicles and files.</summary>
    public IReadOnlyList<Hazard> HazardsInOrder => _hazards ??= [.. Hazards.Values.OrderBy(h => h.Vehicle.Index).ThenBy(h => h.Span)];

    /// <summary>Facts in the order of vehicles and files.</summary>
    public IReadOnlyList<Fact> FactsInOrder => _facts ??= [.. Facts.Values.OrderBy(f => f.Vehicle.Index).ThenBy(f => f.Span)];

    /// <summary>The kinds it was read with.</summary>
    internal KindCatalog? Kinds => Bodies?.Kinds;

    /// <summary>The items as written, so that road numbers can be read over them.</summary>
    internal ItemBodies? Bodies { get; init; }

    /// <summary>The book with the items of one road number: its modifications applied in the order of their dates.</summary>
    /// <exception cref="ArgumentException">The book has no such road number.</exception>
    public ClassBook For(string roadNumber)
    {
        ArgumentNullException.ThrowIfNull(roadNumber);
        return !RoadNumbers.TryGetValue(roadNumber, out RoadNumber? number)
            ? throw new ArgumentException($"The book has no road number `{roadNumber}`.", nameof(roadNumber))
            : this with { Items = ItemsOf(number), RoadNumberInUse = roadNumber };
    }

    /// <summary>The machine with the items of the class, whatever road number is in use.</summary>
    public ClassBook AsDescribed() => RoadNumberInUse is { } number
        ? this with { Items = ItemsOf(RoadNumbers[number] with { Modifications = [] }), RoadNumberInUse = null }
        : this;

    private ImmutableSortedDictionary<string, Item> ItemsOf(RoadNumber number) =>
        Bodies is null ? Items : Bodies.ReadFor(number, new ReadContext(new Findings([], YamlLimits.Default), Bodies.Kinds), new(YamlLimits.Default, 1)).Items;

    /// <summary>The train in whose names a card speaks: that of the first situation that is for it; null (the machine alone) where one of them has none.</summary>
    public string? TrainOf(SourceText card)
    {
        ArgumentNullException.ThrowIfNull(card);
        string name = Path.GetFileNameWithoutExtension(card.Path);
        Situation[] own = [.. Situations.Values.Where(s => s.Cards.Contains(name, StringComparer.Ordinal)).OrderBy(s => s.Span)];
        return own.Length > 0 && own.All(s => s.Train is not null) ? own[0].Train : null;
    }

    /// <summary>The book in whose names a card speaks.</summary>
    public ClassBook For(SourceText card) => TrainInUse is null && TrainOf(card) is { } train ? Coupled(train) : this;

    /// <summary>All vehicles of a train as one book: this machine keeps its names and axes, what belongs to others is called after them (<see cref="Vehicle.NameOf"/>).</summary>
    /// <exception cref="ArgumentException">The book has no such train.</exception>
    public ClassBook Coupled(string train)
    {
        ArgumentNullException.ThrowIfNull(train);
        return Trains.TryGetValue(train, out Train? found) ? Coupled(found, []) : throw new ArgumentException($"The book has no train `{train}`.", nameof(train));
    }

    /// <summary>The same for a train that the book does not list.</summary>
    /// <param name="train">Of this book's classes; it has <c>this machine</c> once.</param>
    /// <param name="found">Takes lines that cannot be joined.</param>
    public ClassBook Coupled(Train train, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentNullException.ThrowIfNull(found);
        return new Coupling(this, train, found).Join();
    }
}
