using System.Collections.Immutable;

namespace Sightglass.Book.Readers;

/// <summary>What a book, or the description of a car in it, is made of; <c>legs</c> beside it.</summary>
/// <param name="Owner">For messages.</param>
/// <param name="Once">Keys that may stand once.</param>
/// <param name="Named">Sections of declared names.</param>
internal sealed record SectionList(string Owner, ImmutableArray<string> Once, ImmutableArray<string> Named)
{
    public static SectionList Book { get; } = new(
        "a file of the book",
        ["book", "edition", "notice", "railroad", "length", "width", "walk starts", "shown in", "in service", "running", "making up"],
        ["places", "roles", "systems", "assemblies", "items", "facts", "signs", "hazards", "protections", "measures", "walks", "bets", "drills", "searches", "routes", "habits", "pictures", "ends", "road numbers", "silhouettes", "cars", "trains", "recordings", "situations"]);

    /// <summary>A car has no people, protections and systems of its own: they are the book's.</summary>
    public static SectionList Car(string name) => new(
        $"the car `{name}`", ["text", "length", "width", "running"], ["places", "items", "facts", "signs", "hazards", "ends", "silhouettes"]);
}
