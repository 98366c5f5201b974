using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Web.Live;

namespace Sightglass.Web.Tests;

/// <summary>A book to look at: of a road number, alone or in a train; and its files, changed while it is served.</summary>
public sealed class BookShelfTests : IDisposable
{
    private const string Heron = "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nitems:\n  horn: { places: [yard], for: Warns., normal: Loud. }\n";

    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-shelf-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    /// <summary>An editor writes in pieces: what has changed since the last look is not read yet.</summary>
    [Fact]
    public void Look_AFileChanged_ReadOnceItRests()
    {
        BookShelf shelf = Open(Heron);
        ServedBook before = shelf.Now;
        int changes = 0;
        shelf.Changed += () => changes++;
        shelf.Look();
        Write("book.yaml", Heron.Replace("Loud.", "Very loud.", StringComparison.Ordinal));
        shelf.Look();
        Assert.Same(before, shelf.Now);
        Write("book.yaml", Heron.Replace("Loud.", "Loud indeed.", StringComparison.Ordinal));
        shelf.Look();
        Assert.Same(before, shelf.Now);
        shelf.Look();
        Assert.Equal("Loud indeed.", shelf.Book.Items["horn"].Normal);
        Assert.Equal("Loud.", before.Book.Items["horn"].Normal);
        Assert.NotEqual(before.Hash, shelf.Hash);
        shelf.Look();
        shelf.Look();
        Assert.Equal(1, changes);
    }

    [Fact]
    public void Reread_WithAnError_KeepsTheLastGoodBookAndSaysWhere()
    {
        BookShelf shelf = Open(Heron);
        ServedBook good = shelf.Now;
        Write("book.yaml", Heron + "  bell: { places: [nowhere], kind: no such thing, for: Warns., normal: Loud. }\n");
        shelf.Reread();
        Assert.Same(good, shelf.Now);
        Assert.Equal(("book.yaml", 5), (shelf.Trouble!.First.Span.Path, shelf.Trouble.First.Span.Line));
        Assert.True(shelf.Trouble.More >= 1);
        Write("book.yaml", Heron + "  bell: { places: [yard], for: Warns., normal: Loud. }\n");
        shelf.Reread();
        Assert.Null(shelf.Trouble);
        Assert.True(shelf.Book.Items.ContainsKey("bell"));
    }

    [Fact]
    public void Reread_NothingChanged_ServesTheSame()
    {
        BookShelf shelf = Open(Heron);
        ServedBook before = shelf.Now;
        shelf.Reread();
        Assert.Same(before, shelf.Now);
    }

    /// <summary>Whoever runs goes on with the book that the run began with.</summary>
    [Fact]
    public void Reread_WhileAMachineLives_ItKeepsItsBook()
    {
        BookShelf shelf = Open(Heron);
        using MachineRoom room = new(shelf, Path.Combine(_folder, "records"), TimeProvider.System);
        LiveSession session = room.Session;
        Write("book.yaml", Heron.Replace("Loud.", "Very loud.", StringComparison.Ordinal));
        shelf.Reread();
        Assert.Same(session, room.Session);
        Assert.Equal("Loud.", room.Session.Plan.Book.Items["horn"].Normal);
        Assert.True(room.IsByAnEarlierBook);
        Assert.Null(room.Begin(room.Session.Start));
        Assert.Equal("Very loud.", room.Session.Plan.Book.Items["horn"].Normal);
        Assert.False(room.IsByAnEarlierBook);
        Assert.Contains(shelf.Hash, File.ReadAllText(Path.Combine(_folder, "records", "current.jsonl")), StringComparison.Ordinal);
    }

    /// <summary>The book is served without what it says in a language that has an error, and that is told.</summary>
    [Fact]
    public void Open_ALanguageWithAnError_IsLeftOutAndTold()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "heron", "words"));
        Write(Path.Combine("words", "es.yaml"), "texts:\n  - { text: horn, says: bocina }\n  - { text: horn, says: claxon }\n");
        BookShelf shelf = Open(Heron);
        Diagnostic unsaid = Assert.Single(shelf.Now.Unsaid);
        Assert.Equal(("words/es.yaml", 3), (unsaid.Span.Path, unsaid.Span.Line));
        Assert.Empty(shelf.Book.Languages);
        Write(Path.Combine("words", "es.yaml"), "texts:\n  - { text: horn, says: bocina }\n");
        shelf.Reread();
        Assert.Empty(shelf.Now.Unsaid);
        Assert.Equal("bocina", shelf.Book.TongueOf("es").OfBook("horn"));
    }

    [Theory]
    [InlineData("4101", "night mail", 7)]
    [InlineData("4107", "local train", 4)]
    [InlineData("4101", null, 1)]
    [InlineData("4101", "no such train", 1)]
    public void BookOf_TrainOrNone_HasItsVehicles(string road, string? train, int vehicles)
    {
        ClassBook book = Shelves.Curlew.BookOf(road, train);
        Assert.Equal(vehicles, book.Vehicles.Length);
        Assert.Equal(road, book.RoadNumberInUse);
        Assert.Same(book, Shelves.Curlew.BookOf(road, train));
    }

    [Fact]
    public void BookOf_UnknownRoadNumber_IsTheFirst() => Assert.Equal(Shelves.Curlew.RoadNumbers[0], Shelves.Curlew.BookOf("4999", null).RoadNumberInUse);

    private BookShelf Open(string book)
    {
        Write("book.yaml", book);
        DiagnosticList found = [];
        return BookShelf.Open(Path.Combine(_folder, "heron"), found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.Combine(_folder, "heron"));
        File.WriteAllText(Path.Combine(_folder, "heron", file), text);
    }
}
