using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Assemblies;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Recordings;
using Sightglass.Book.Trains;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Readers;

/// <summary>Builds a book from its sections, each part by its reader.</summary>
/// <param name="sections">What was written.</param>
/// <param name="context">Takes findings and names.</param>
/// <param name="folder">Holds the files of recordings; null for a book that is read from texts.</param>
internal sealed class BookBuilder(Sections sections, ReadContext context, RecordingFolder? folder)
{
    private readonly PartReader _parts = new(sections, context);

    /// <summary>What the checks look at beside the class: its road numbers, its cars, its trains.</summary>
    public BookVariants Variants { get; private set; } = BookVariants.None;

    public ClassBook Build(Span first, IEnumerable<SourceText> cards)
    {
        ImmutableDictionary<string, Assembly> assemblies = AssemblyReader.ReadAll(sections["assemblies"], context);
        HashSet<string> used = new(StringComparer.Ordinal);
        ItemBodies bodies = new(sections["items"], assemblies, used, context);
        ImmutableSortedDictionary<string, RoadNumber> numbers = _parts.Each("road numbers", RoadNumberReader.Read);
        ImmutableDictionary<string, RoadNumberItems> ofNumbers = RoadNumberItems.ReadAll(numbers, bodies, context);
        ClassBook machine = _parts.Into(HeadReader.Read(sections, first, context), bodies) with
        {
            Roles = _parts.Each("roles", PeopleReader.ReadRole),
            Protections = _parts.Each("protections", PeopleReader.ReadProtection),
            Systems = _parts.Each("systems", MachineReader.ReadSystem),
            Measures = _parts.Each("measures", TruthReader.ReadMeasure),
            Walks = _parts.Each("walks", WalkReader.Read),
            Bets = _parts.Each("bets", BetReader.Read),
            Drills = _parts.Each("drills", DrillReader.Read),
            Searches = _parts.Each("searches", SearchReader.Read),
            Routes = _parts.Each("routes", RouteReader.Read),
            Habits = _parts.Each("habits", HabitReader.Read),
            Pictures = _parts.Each("pictures", PictureReader.Read),
            RoadNumbers = numbers,
            CardTexts = [.. cards],
        };
        ImmutableSortedDictionary<string, CarItems> cars = _parts.Each("cars", new CarReader(machine, assemblies, used).Read);
        foreach (Assembly unused in assemblies.Values.Where(a => !used.Contains(a.Name)))
        {
            context.AddMissing(BookMessages.UnusedAssembly(unused.Span, unused.Name));
        }

        ClassBook book = machine with
        {
            Cars = cars.ToImmutableSortedDictionary(c => c.Key, c => c.Value.Car, StringComparer.Ordinal),
            Trains = _parts.Each("trains", TrainReader.Read),
        };
        MakingUpReader.Check(book, context);
        return Situations(book, ofNumbers, cars);
    }

    /// <summary>A situation is read in the names of its train: vehicles are coupled first.</summary>
    private ClassBook Situations(ClassBook book, ImmutableDictionary<string, RoadNumberItems> numbers, ImmutableSortedDictionary<string, CarItems> cars)
    {
        Dictionary<string, TrainItems> trains = new(StringComparer.Ordinal);
        foreach (Train train in book.Trains.Values.Where(t => t.Vehicles.All(v => v.IsMachine || book.Cars.ContainsKey(v.Class))))
        {
            DiagnosticList notes = [];
            ClassBook coupled = new Coupling(book, train, notes).Join();
            context.Found.AddRange(notes);
            trains[train.Name] = new(coupled, context.Within());
        }

        HashSet<string> declared = book.Bodies!.Names.ToHashSet(StringComparer.Ordinal);
        Func<string, Span, SourceText?>? files = folder is null ? null : folder.Read;
        ImmutableSortedDictionary<string, Recording> recordings = _parts.Each("recordings", (e, _) =>
        {
            return TrainOf(e) is { } train
                ? new RecordingReader(train.Context, new(train.Coupled.Items, declared), train.Coupled.Vehicles, files).Read(e)
                : new RecordingReader(context, new(book.Items, declared), book.Vehicles, files).Read(e);
        });
        ClassBook whole = book with
        {
            Recordings = recordings,
            Situations = _parts.Each("situations", (e, _) =>
            {
                return TrainOf(e) is { } train
                    ? new SituationReader(train.Context, new(train.Coupled.Items, declared), train.Coupled.Vehicles, recordings).Read(e)
                    : new SituationReader(context, ScopeOf(e, book, numbers, declared), book.Vehicles, recordings).Read(e);
            }),
        };
        Variants = new([.. numbers.Values], [.. cars.Values], [.. trains.Values.Select(t => t with { Coupled = t.Coupled with { Situations = whole.Situations, Recordings = recordings } })]);
        return whole;

        TrainItems? TrainOf(YamlEntry e) => ((e.Value as YamlMap)?.Find("train")?.Value as YamlScalar)?.Value is { } named ? trains.GetValueOrDefault(named) : null;
    }

    /// <summary>A situation on road numbers sees the items of the first of them, any other those of the class. What the others lack is told where it is bound to their plants.</summary>
    private static StartScope ScopeOf(YamlEntry situation, ClassBook book, ImmutableDictionary<string, RoadNumberItems> numbers, HashSet<string> declared)
    {
        YamlNode? named = (situation.Value as YamlMap)?.Find("road number")?.Value;
        string? number = ((named is YamlList list ? list.Items.FirstOrDefault() : named) as YamlScalar)?.Value;
        RoadNumberItems? own = number is null ? null : numbers.GetValueOrDefault(number);
        return new(own?.Items ?? book.Items, declared);
    }
}
