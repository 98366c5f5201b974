using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Training.Papers;

namespace Sightglass.Web.Papers;

/// <summary>A card of the book with its editions.</summary>
/// <param name="Name">Of its file, without folder and ending: what an address says.</param>
/// <param name="Title">As people know it.</param>
/// <param name="Text">As it stands in the book.</param>
/// <param name="Editions">Oldest first.</param>
public sealed record CardShelf(string Name, string Title, SourceText Text, ImmutableArray<EditionFile> Editions)
{
    /// <summary>The one people work by; null where there is none.</summary>
    public EditionFile? InForce => Editions.LastOrDefault(e => e.IsInForce);

    public EditionFile? Latest => Editions.IsEmpty ? null : Editions[^1];

    /// <summary>Copies that are out and should not be, with their editions.</summary>
    public IEnumerable<(EditionFile Edition, PaperCopy Copy)> ToRecall => Editions.SelectMany(e => e.ToRecall.Select(c => (e, c)));

    /// <summary>Where it stands, in few words.</summary>
    public string Stands => InForce is { } force ? Say.With($"edition {force.Number} approved")
        : Latest is { } last ? Say.With($"edition {last.Number} {PaperMoves.Word(last.State)}")
        : Say.It("no edition");
}
