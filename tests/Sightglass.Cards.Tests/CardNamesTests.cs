using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

public sealed class CardNamesTests
{
    private static readonly CardNames s_names = new(TestBook.Book, EnglishForms.Language);

    private static readonly Letter s_letter = new("C", new Phrase("compartment", Span.None), ["forward", "centre", "aft"], null, Span.None);

    private static readonly Scope s_aft = new([s_letter], ImmutableDictionary<string, string>.Empty.Add("C", "aft"));

    [Theory]
    [InlineData("aft supply valve", "aft supply valve")]
    [InlineData("an aft supply valve", "aft supply valve")]
    [InlineData("A truck window, right of car 1", "A truck window, right of car 1")]
    [InlineData("the A truck window, right of car 1", "A truck window, right of car 1")]
    [InlineData("the a truck window, right of car 1", "A truck window, right of car 1")]
    [InlineData("a truck window, right of car 1", "A truck window, right of car 1")]
    [InlineData("A sight glass of C, right", "aft sight glass, right")]
    [InlineData("the aft supply valve", "aft supply valve")]
    [InlineData("The Aft supply valve", "aft supply valve")]
    [InlineData("supply valve of C", "aft supply valve")]
    [InlineData("the supply valve of C", "aft supply valve")]
    [InlineData("C's supply valve", "aft supply valve")]
    [InlineData("C’s supply valve", "aft supply valve")]
    [InlineData("C supply valve", "aft supply valve")]
    [InlineData("supply valve of compartment C", "aft supply valve")]
    [InlineData("supply valve of the C compartment", "aft supply valve")]
    [InlineData("compartment C", "aft compartment")]
    [InlineData("the C compartment", "aft compartment")]
    [InlineData("C compartment", "aft compartment")]
    [InlineData("sight glass of C", "aft sight glass, left|aft sight glass, right")]
    [InlineData("C's sight glass on the right side", "aft sight glass, right")]
    [InlineData("sight glass of C, right", "aft sight glass, right")]
    [InlineData("aft sight glass on the left side", "aft sight glass, left")]
    [InlineData("supply valve of each other compartment", "forward supply valve+centre supply valve")]
    [InlineData("the supply valve of every other compartment", "forward supply valve+centre supply valve")]
    [InlineData("each other compartment's supply valve", "forward supply valve+centre supply valve")]
    [InlineData("each compartment", "forward compartment+centre compartment+aft compartment")]
    public void Items_Phrase_NamesWhatAPersonMeans(string phrase, string expected)
    {
        Found<Book.Model.Item> found = s_names.Items(new Phrase(phrase, Span.None), s_aft);
        Assert.Equal(expected, string.Join('+', found.Groups.Select(g => string.Join('|', g.Select(i => i.Name)))));
        Assert.False(found.IsLoose);
    }

    [Fact]
    public void Items_AnyOther_MeansAtLeastOne() =>
        Assert.Equal(Quantifier.Any, s_names.Items(new Phrase("the sight glass of any other compartment", Span.None), s_aft).Quantifier);

    [Theory]
    [InlineData("aft suply valve", "aft supply valve")]
    [InlineData("suply valve of C", "aft supply valve")]
    public void Items_Misspelt_TellsTheNearest(string phrase, string nearest)
    {
        Found<Book.Model.Item> found = s_names.Items(new Phrase(phrase, Span.None), s_aft, help: true);
        Assert.False(found.IsFound);
        Assert.Equal(nearest, found.Nearest);
    }

    [Theory]
    [InlineData("supply valve, aft")]
    [InlineData("aft supply-valve")]
    [InlineData("aft supply valves")]
    public void Items_NotTheLabel_IsFoundLoosely(string phrase)
    {
        Found<Book.Model.Item> found = s_names.Items(new Phrase(phrase, Span.None), s_aft, help: true);
        Assert.True(found.IsLoose);
        Assert.Equal("aft supply valve", found.Nearest);
    }

    /// <summary>The A of a name is no article: without it nobody knows which truck is meant.</summary>
    [Fact]
    public void Items_LetterOfTheNameLeftOut_IsNotTheOneCalledA()
    {
        Phrase phrase = new("the truck window, right of car 1", Span.None);
        Assert.False(s_names.Items(phrase, s_aft).IsFound);
        Found<Book.Model.Item> found = s_names.Items(phrase, s_aft, help: true);
        Assert.True(found.IsLoose);
        Assert.Equal("A truck window, right of car 1", found.Nearest);
    }

    [Theory]
    [InlineData("fuel is seen at the foot of the aft compartment")]
    [InlineData("fuel is seen at the foot of compartment C")]
    [InlineData("Fuel is seen at the foot of C")]
    [InlineData("fuel at the foot of C")]
    public void Signs_Phrase_IsFound(string phrase) =>
        Assert.Equal("fuel is seen at the foot of the aft compartment", s_names.Signs(new Phrase(phrase, Span.None), s_aft).Groups[0][0].Name);

    [Fact]
    public void Signs_ItsInLet_IsTheLetters() => Assert.Equal(
        "fuel is seen at the foot of the aft compartment",
        s_names.Signs(new Phrase("fuel is seen at its foot", Span.None), s_aft with { Owner = s_letter }).Groups[0][0].Name);

    [Theory]
    [InlineData("compartment C is empty", "aft compartment is empty")]
    [InlineData("the engine runs", "engine runs")]
    [InlineData("compartment overflows", "a compartment overflows")]
    public void Facts_Phrase_IsFound(string phrase, string expected) =>
        Assert.Equal(expected, s_names.Facts(new Phrase(phrase, Span.None), s_aft).Groups[0][0].Name);

    [Theory]
    [InlineData("the fuel panel on the right side", "fuel panel, right")]
    [InlineData("fuel panel, left", "fuel panel, left")]
    [InlineData("the fuel panel", "fuel panel, left|fuel panel, right")]
    public void Places_Phrase_IsFound(string phrase, string expected) =>
        Assert.Equal(expected, string.Join('|', s_names.Places(new Phrase(phrase, Span.None), s_aft).Groups[0].Select(p => p.Name)));

    [Fact]
    public void Places_OnTheLettersSide_IsWhereItsItemIs()
    {
        Book.Model.ClassBook book = TestBook.Book with
        {
            Items = TestBook.Book.Items.SetItem("aft compartment", TestBook.Book.Items["aft compartment"] with { Places = [TestBook.PanelLeft] }),
        };
        CardNames names = new(book, EnglishForms.Language);
        Assert.Equal(TestBook.PanelLeft, Assert.Single(names.Places(new Phrase("the fuel panel on C's side", Span.None), s_aft).Groups[0]).Name);
    }

    [Fact]
    public void Protections_WithAndWithoutTheWord_AreTheSame()
    {
        Assert.Equal("going between", s_names.Protections(new Phrase("protection for going between", Span.None), s_aft).Groups[0][0].Name);
        Assert.Equal("going between", s_names.Protections(new Phrase("going between", Span.None), s_aft).Groups[0][0].Name);
    }
}
