using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.People;

namespace Sightglass.Training.Drills;

/// <summary>
/// What somebody in a world sees, hears, smells and holds where they stand, and nothing else: all that may ever be sent to their page. On the way there is nothing to read.
/// </summary>
/// <param name="At">The clock.</param>
/// <param name="Place">Where they stand; null on the way.</param>
/// <param name="Towards">Where a walk ends; null while standing.</param>
/// <param name="IsBusy">On the way, or at something.</param>
/// <param name="Items">What is within reach.</param>
/// <param name="Signs">What is noticed there, in the book's words.</param>
/// <param name="Roles">Who else stands there.</param>
/// <param name="Held">Protections that they hold, and controls that they have permission for.</param>
/// <param name="Guards">Locks, chocks and signals that stand there.</param>
public sealed record Sight(
    SimTime At,
    string? Place,
    string? Towards,
    bool IsBusy,
    ImmutableArray<SeenItem> Items,
    ImmutableArray<string> Signs,
    ImmutableArray<string> Roles,
    ImmutableArray<string> Held,
    ImmutableArray<SeenGuard> Guards)
{
    /// <summary>Items that they came to and did not get by, and that are not mended.</summary>
    public ImmutableArray<string> Shut { get; init; } = [];

    /// <summary>Where they wanted to go and found no way; null: nowhere.</summary>
    public string? Missed { get; init; }

    /// <summary>What a person knows of a world by their senses now. Only with the machine in view.</summary>
    public static Sight Of(World.World world, Person person)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(person);
        ClassBook book = world.Plan.Book;
        string? place = world.PlaceOf(person);
        PlaceView? view = place is null ? null : PlaceView.Of(world.Plan, place);
        return new(
            world.Now,
            place,
            person.Towards < 0 ? null : world.Plan.Ways.Places[person.Towards].Name,
            person.WalkingTo >= 0 || person.Deed is not null,
            view is null ? [] : [.. view.Items.Select(i => Look(world, i.Item, i.Plan, i.Reading))],
            view is null ? [] : [.. view.Signs.Where(s => world.Value(s.Margin) >= 0).Select(s => s.Sign.Name)],
            place is null ? [] : [.. world.People.Where(p => p != person && p.Place == person.Place).Select(p => p.Role.Name)],
            person.Protections == 0 && person.Permissions.Count == 0 ? [] : [.. book.Protections.Values.Where(p => p.Sort == ProtectionSort.Asked && world.IsProtected(person, p)).Select(p => p.Name), .. person.Permissions.Order(StringComparer.Ordinal)],
            place is null ? [] : [.. world.Guards.Where(g => IsHere(book, g.Sort, g.Target, place)).Select(g => new SeenGuard(g.Protection, g.Target, g.Owner == person.Id))])
        {
            Shut = [.. person.Ways.Shut.Where(world.IsShut)],
            Missed = person.Missed < 0 ? null : world.Plan.Ways.Places[person.Missed].Name,
        };
    }

    /// <summary>Where a person is, and nothing of what they see: it needs no machine in view.</summary>
    public static Sight Whereabouts(World.World world, Person person)
    {
        ArgumentNullException.ThrowIfNull(world);
        ArgumentNullException.ThrowIfNull(person);
        return new(world.Now, world.PlaceOf(person), person.Towards < 0 ? null : world.Plan.Ways.Places[person.Towards].Name, person.WalkingTo >= 0 || person.Deed is not null, [], [], [], [], []);
    }

    private static bool IsHere(ClassBook book, ProtectionSort sort, string target, string place) =>
        sort == ProtectionSort.SetAt ? target == place : book.Items.TryGetValue(target, out Item? item) && item.Places.Contains(place);

    private static SeenItem Look(World.World world, Item item, ItemPlan? plan, Signal? reading) => new(
        item.Name,
        plan?.Position is { } slot ? item.Positions[(int)world.GetSlot(slot)] : null,
        reading is null ? null : world.Read(item),
        plan?.Lit is { } lit ? world.Value(lit) >= 0 : null);
}
