using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;

namespace Sightglass.Trials.Causes;

/// <summary>One thing that may be wrong: a fault of an item, or a control that stands where it should not.</summary>
/// <param name="Item">Of the book, or of the train.</param>
/// <param name="Fault">Its fault; null for a control.</param>
/// <param name="Position">Where the control stands; null for a fault.</param>
/// <param name="Likelihood">How often it is so, compared to the others.</param>
public sealed record Cause(Item Item, string? Fault, string? Position, double Likelihood)
{
    /// <summary>As an instructor says it: <c>load contactor: open coil</c>, <c>isolation switch at isolated</c>.</summary>
    public string Words => Fault is { } fault ? Say.With($"{Item.Name}: {new PositionWord(Item.Name, fault)}") : Say.With($"{Item.Name} stands {new PositionWord(Item.Name, Position!)}");
}
