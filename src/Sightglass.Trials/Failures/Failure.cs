using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Failures;

/// <summary>What happens when one thing fails while the machine is in service.</summary>
/// <param name="Item">What fails.</param>
/// <param name="Fault">How.</param>
/// <param name="NoLonger">Facts that hold without it and not with it, in the order of the book.</param>
/// <param name="Now">Facts that hold with it alone.</param>
/// <param name="Changes">What shows, nearest to the item first.</param>
/// <param name="Trouble">Why it could not be run to the end; null where it could.</param>
public sealed record Failure(Item Item, string Fault, ImmutableArray<Fact> NoLonger, ImmutableArray<Fact> Now, ImmutableArray<FailureChange> Changes, string? Trouble)
{
    /// <summary>Ways that are longer with it, or are none any more: these first, then the longest.</summary>
    public ImmutableArray<FailureWay> Ways { get; init; } = [];

    /// <summary>Titles of the cards that cannot be worked while it is there.</summary>
    public ImmutableArray<string> Cards { get; init; } = [];

    /// <summary>Protections that nobody can set while it is there.</summary>
    public ImmutableArray<string> Protections { get; init; } = [];

    /// <summary>Nothing that anybody can see or that the book calls a fact is otherwise: it waits.</summary>
    public bool IsHidden => Trouble is null && NoLonger.IsEmpty && Now.IsEmpty && Changes.IsEmpty && Ways.IsEmpty && Cards.IsEmpty && Protections.IsEmpty;

    /// <summary>All that is otherwise, in words: what it does, before what shows.</summary>
    public IEnumerable<string> Told() =>
    [
        .. NoLonger.Select(f => Say.With($"no longer: {f.Name}")),
        .. Now.Select(f => Say.With($"now: {f.Name}")),
        .. Cards.Select(c => Say.With($"cannot be worked: {c}")),
        .. Protections.Select(p => Say.With($"cannot be set: {p}")),
        .. Ways.Select(w => w.Words),
        .. Changes.Select(c => c.Words),
    ];
}
