using System.Collections.Immutable;
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
    /// <summary>Nothing that anybody can see or that the book calls a fact is otherwise: it waits.</summary>
    public bool IsHidden => Trouble is null && NoLonger.IsEmpty && Now.IsEmpty && Changes.IsEmpty;
}
