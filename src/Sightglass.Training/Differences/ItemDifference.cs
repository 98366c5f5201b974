using System.Collections.Immutable;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Training.Differences;

/// <summary>How one item differs between two machines.</summary>
/// <param name="Before">On the machine that is known; null where it has none.</param>
/// <param name="After">On the other; null where it has none.</param>
/// <param name="Sort">The gravest way in which it differs.</param>
/// <param name="Changes">All of them.</param>
public sealed record ItemDifference(Item? Before, Item? After, DifferenceSort Sort, ImmutableArray<Change> Changes)
{
    public Item Item => After ?? Before!;

    /// <summary>The habit that now hurts, in a sentence; null where there is none.</summary>
    public string? Habit => Sort switch
    {
        DifferenceSort.WorksOtherwise when Changes.FirstOrDefault(c => c.What == "usual position") is { } usual => Say.With($"A hand that leaves it {usual.Was} leaves it wrong: here it stands {usual.Is}."),
        DifferenceSort.WorksOtherwise when Changes.FirstOrDefault(c => c.What == "positions") is { } positions => Say.With($"A hand that looks for {positions.Was} finds {positions.Is}."),
        DifferenceSort.WorksOtherwise => Say.It("Whoever did it, or asked, before: look who may and who is told here."),
        DifferenceSort.ShowsOtherwise when Changes.Any(c => c.What is "shows" or "scale") => Say.It("The same needle says something else: what was read from it before is not what it tells now."),
        DifferenceSort.Gone => Say.It("Whoever reaches for it finds nothing."),
        DifferenceSort.Moved => Say.It("Whoever goes where it was finds something else there, or nothing."),
        DifferenceSort.LabelledOtherwise => Say.It("Whoever looks for the label they know does not find it."),
        _ => null,
    };
}
