using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards;
using Sightglass.Cards.Story;
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

    /// <summary>A list of cards, such as that of the papers, says their titles as the translated cards do; comments may stand before a title.</summary>
    [Fact]
    public void Titles_OfCards_AreSaid()
    {
        ClassBook book = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), []);
        Tongue spanish = book.TongueOf("es");
        Assert.Equal("Suena la alarma y nadie sabe qué unidad", spanish.OfBook("The alarm rings and nobody knows which unit"));
        Assert.All(book.CardTexts.Select(t => CardReader.Read(t, book.For(t), [])!.Title), t => Assert.NotEqual(t, spanish.OfBook(t)));
    }

    /// <summary>A breaker that is off is called <c>apagado</c> as a lamp is: its position is meant, not its light; of a lamp, its light.</summary>
    [Fact]
    public void Card_ABreakerCalledAsALampIs_IsTheSameProgram()
    {
        DiagnosticList found = [];
        ClassBook book = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), found);
        BookWords words = book.Languages["es"];
        SourceText card = words.Cards.Single(t => t.Path.EndsWith("dark-headlight.card", StringComparison.Ordinal));
        Assert.Contains("el disyuntor de los faros está desconectado", card.Text, StringComparison.Ordinal);
        SourceText other = new(card.Path, card.Text.Replace("el disyuntor de los faros está desconectado", "el disyuntor de los faros está apagado", StringComparison.Ordinal));
        TranslatedCards.Check(book, new BookWords(Tongue.Spanish, words.Words, words.Cards.Replace(card, other)), found);
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    [Theory]
    [InlineData("headlight breaker", "off", "desconectado")]
    [InlineData("battery switch", "closed", "cerrado")]
    [InlineData("battery switch", "open", "abierto")]
    [InlineData("aft supply valve", "closed", "cerrada")]
    [InlineData("horn cutout cock", "open", "abierta")]
    [InlineData("horn cutout cock", "", "")]
    public void Position_InSpanish_AgreesWithItsThing(string item, string position, string says)
    {
        using IDisposable speaking = WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), []).TongueOf("es").Speak();
        Assert.Equal(says, PositionWords.Of(item, position));
    }
}
