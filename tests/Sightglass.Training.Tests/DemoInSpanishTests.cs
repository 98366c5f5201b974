using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Tests.Support;

namespace Sightglass.Training.Tests;

/// <summary>The demo class is whole in Spanish: every text is said, nothing is said that the book no longer has, and every card is the same program.</summary>
public sealed class DemoInSpanishTests
{
    [Fact]
    public void Demo_InSpanish_LacksNothing()
    {
        DiagnosticList found = [];
        ClassBook book = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), found);
        BookWords words = book.Languages["es"];
        WordsCheck.Whole(book, words, found);
        TranslatedCards.Check(book, words, found);
        Assert.True(found.Count == 0, string.Join('\n', found));
        Assert.Equal(book.CardTexts.Length, words.Cards.Length);
    }

    /// <summary>What belongs to a vehicle of a train is put together from the vehicle's own names.</summary>
    [Theory]
    [InlineData("brake pipe of car 3")]
    [InlineData("car 2")]
    public void Name_OfAVehicle_IsSaid(string name)
    {
        DiagnosticList found = [];
        ClassBook book = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), found);
        Assert.NotEqual(name, book.TongueOf("es").OfBook(name));
    }

    [Fact]
    public void Card_InSpanish_IsThatOfTheBook()
    {
        DiagnosticList found = [];
        ClassBook book = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), found);
        SourceText card = book.CardTexts.First(t => t.Path.EndsWith("drain-water.card", StringComparison.Ordinal));
        Assert.StartsWith("words/es/", TranslatedCards.Of(book, card, Tongue.Spanish)!.Path, StringComparison.Ordinal);
        Assert.Null(TranslatedCards.Of(book, card, Tongue.English));
    }
}
