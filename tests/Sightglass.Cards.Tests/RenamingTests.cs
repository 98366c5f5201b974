using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>The parser knows no name: a machine whose items are called by words of the language's own sentences is read as well.</summary>
public sealed class RenamingTests
{
    /// <summary>Old word → new words, chosen to be in the way of the sentences.</summary>
    private static readonly (string Old, string New)[] s_names =
    [
        ("sight glass", "gauge that shows and is at least"),
        ("supply valve", "cock to close until stop"),
        ("return valve", "if not handle, at most"),
        ("fuel panel", "step to go to and wait"),
        ("compartment", "other each"),
        ("room", "more or less"),
    ];

    [Theory]
    [InlineData("forward")]
    [InlineData("aft")]
    public void Read_NamesInTheWayOfTheSentences_GivesTheSameProgram(string word)
    {
        ClassBook book = TestBook.Book with
        {
            Items = Renamed(TestBook.Book.Items, (i, n) => i with { Name = n, Places = [.. i.Places.Select(New)], Reading = Renamed(i.Reading) }),
            Places = Renamed(TestBook.Book.Places, (p, n) => p with { Name = n }),
            Facts = Renamed(TestBook.Book.Facts, (f, n) => f with { Name = n }),
            Signs = Renamed(TestBook.Book.Signs, (s, n) => s with { Name = n, Places = [.. s.Places.Select(New)] }),
        };
        DiagnosticList found = [];
        Card? card = CardReader.Read(new SourceText("renamed.card", New(Cards.Leak)), book, found);
        Assert.Empty(found);
        string program = ProgramListing.Of(CardCompiler.Compile(card!, book, word));
        Assert.Equal(New(Cards.Listing(Cards.Leak, word)), program);
    }

    private static Reading? Renamed(Reading? reading) => reading is null
        ? null
        : reading with { Words = reading.Words.ToImmutableSortedDictionary(w => New(w.Key), w => w.Value, StringComparer.Ordinal) };

    private static ImmutableSortedDictionary<string, T> Renamed<T>(ImmutableSortedDictionary<string, T> things, Func<T, string, T> rename) =>
        things.ToImmutableSortedDictionary(p => New(p.Key), p => rename(p.Value, New(p.Key)), StringComparer.Ordinal);

    private static string New(string text) => s_names.Aggregate(text, (t, n) => t.Replace(n.Old, n.New, StringComparison.Ordinal));
}
