using System.Collections.Concurrent;
using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Failures;
using Sightglass.Web.Live;

namespace Sightglass.Web.Failures;

/// <summary>What happens if an item of the book that is served fails: each worked out once for everybody, one after the other.</summary>
/// <param name="shelf">The book.</param>
public sealed class FailureDesk(BookShelf shelf) : IDisposable
{
    private readonly OneByOne _one = new();
    private readonly ConcurrentDictionary<(ServedBook Of, string Item), Lazy<Task<ImmutableArray<Failure>>>> _worked = new();

    /// <summary>The situation in which things fail; null where the book names none.</summary>
    public Situation? InService => shelf.Book.InService is { } name ? shelf.Book.Situations.GetValueOrDefault(name) : null;

    /// <summary>Whether anything of an item can fail.</summary>
    public bool CanFail(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return InService is not null && !item.Kind.Faults.IsEmpty;
    }

    /// <summary>Its failures; empty where it is not in the train of the situation, or nothing in it can fail.</summary>
    public Task<ImmutableArray<Failure>> Of(Item item)
    {
        ArgumentNullException.ThrowIfNull(item);
        ServedBook now = shelf.Now;
        foreach ((ServedBook Of, string) old in _worked.Keys.Where(k => k.Of != now))
        {
            _worked.TryRemove(old, out _);
        }

        return _worked.GetOrAdd((now, item.Name), _ => new(() => _one.Do(() => Work(now, item.Name)))).Value;
    }

    public void Dispose() => _one.Dispose();

    private static ImmutableArray<Failure> Work(ServedBook book, string item)
    {
        if (book.Book.InService is not { } name)
        {
            return [];
        }

        Situation situation = book.Book.Situations[name];
        Plan? plan = book.Fleet.For(situation.RoadNumbers.FirstOrDefault(), situation.Train);
        return plan is not null && plan.Book.Items.TryGetValue(item, out Item? failing) ? FailureRun.Of(plan, situation, [failing], FailureRun.Usual) : [];
    }
}
