using System.Collections.Immutable;

namespace Sightglass.Book.Checks;

/// <summary>The checks that the reader runs on every book; the plant adds those of formulas.</summary>
public static class BookChecks
{
    public static ImmutableArray<BookCheck> Default { get; } = [NameChecks.Run, ReachChecks.Run, ItemChecks.Run];
}
