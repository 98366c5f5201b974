using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;

namespace Sightglass.Book.Tests.Language;

/// <summary>A book in another language: what it says, and every mistake told where it is.</summary>
public sealed class BookWordsTests
{
    private const string Words = """
        texts:
          - { text: forward, says: delantero }
          - { text: aft, says: trasero }
          - { text: "{name} compartment", says: "compartimento {name}" }
          - { text: "{name} supply valve", says: "válvula de suministro del compartimento {name}" }
          - { text: brakes of this car are applied, says: los frenos de este coche están aplicados }
          - { text: brake pipe, says: tubería de freno }
          - { text: room, says: espacio }

        """;

    private static readonly ClassBook s_book = SampleBook.Good(SampleBook.Text);

    [Theory]
    [InlineData("forward", "delantero")]
    [InlineData("forward compartment", "compartimento delantero")]
    [InlineData("aft supply valve", "válvula de suministro del compartimento trasero")]
    [InlineData("Brake pipe", "Tubería de freno")]
    [InlineData("brake pipe of car 3", "tubería de freno del coche 3")]
    [InlineData("car 12", "coche 12")]
    [InlineData("unit 2", "unidad 2")]
    [InlineData("forward compartment of unit 2", "compartimento delantero de la unidad 2")]
    [InlineData("brakes of car 3 are applied", "los frenos del coche 3 están aplicados")]
    [InlineData("brakes of every car are applied", "los frenos de cada coche están aplicados")]
    [InlineData("brakes of a car are applied", "los frenos de un coche están aplicados")]
    [InlineData("brake pipe between car 3 and unit 2", "tubería de freno entre el coche 3 y la unidad 2")]
    [InlineData("upper compartment", null)]
    [InlineData("a compartment", null)]
    [InlineData("oil of car 3", null)]
    public void Find_Text_SaysIt(string text, string? expected) => Assert.Equal(expected, Read(Words).Words!.Find(text));

    [Theory]
    [InlineData("text: aft, says", "text: forward, says", "T001")]
    [InlineData("compartimento {name}\"", "compartimento {nombre}\"", "T002")]
    [InlineData("compartimento {name}\"", "compartimento\"", "T002")]
    [InlineData("says: trasero", "says: delantero", "T006")]
    [InlineData("\"compartimento {name}\"", "\"compartimento ({name})\"", "T008")]
    [InlineData("says: espacio", "say: espacio", "B030")]
    [InlineData("texts:", "text:", "B030")]
    public void Read_Mistake_IsToldAtItsPlace(string right, string wrong, string code)
    {
        DiagnosticList found = Read(Words.Replace(right, wrong, StringComparison.Ordinal)).Found;
        Diagnostic first = found.First(d => d.Severity == Severity.Error);
        Assert.Equal(code, found.First(d => d.Code == code).Code);
        Assert.Equal("words/es.yaml", first.Span.Source!.Path);
        Assert.NotNull(first.Fix);
    }

    [Fact]
    public void Read_LanguageThatTheProgramDoesNotSpeak_IsTold() =>
        Assert.Equal("T005", Assert.Single(Read(Words, "words/xx.yaml").Found).Code);

    [Fact]
    public void Read_CardOfNoCard_IsTold()
    {
        DiagnosticList found = [];
        WordsReader.Read(s_book, new("words/es.yaml", Words), [new("words/es/nowhere.card", "Ficha: Nada\n")], found);
        Assert.Equal("T007", Assert.Single(found).Code);
    }

    [Fact]
    public void CheckWhole_TellsWhatIsMissingAndWhatIsTooMuch()
    {
        BookWords words = Read(Words).Words!;
        DiagnosticList found = [];
        WordsCheck.Whole(s_book, words, found);
        string[] texts = [.. BookTexts.Of(s_book).Select(t => t.Text)];
        Assert.Equal(texts.Count(t => words.Find(t) is null && t is not ("low" or "off" or "on" or "idle" or "stop") && !t.StartsWith("notch ", StringComparison.Ordinal)), found.Count(d => d.Code == "T004"));
        Assert.Contains(found, d => d.Code == "T003" && d.Message.Contains("brakes of this car", StringComparison.Ordinal));
        Assert.DoesNotContain(found, d => d.Code == "T003" && d.Message.Contains("compartment`", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("low", false)] // a word of kinds: the program says it
    [InlineData("half", true)]
    public void Missing_WordOfAScale_IsThereUnlessTheProgramSaysIt(string word, bool isMissing) =>
        Assert.Equal(isMissing, WordsCheck.Missing(s_book, Read(Words).Words).Any(t => t.Text == word));

    [Fact]
    public void Of_Book_HasEveryNameOnce()
    {
        string[] texts = [.. BookTexts.Of(s_book).Select(t => t.Text)];
        Assert.Equal(texts.Length, texts.Distinct().Count());
        Assert.All(s_book.Items.Keys.Concat(s_book.Places.Keys).Concat(s_book.Facts.Keys).Concat(s_book.Situations.Keys), n => Assert.Contains(n, texts));
    }

    /// <summary>A list made for a translator reads as it stands and is empty of nothing that is missing.</summary>
    [Fact]
    public void Of_Missing_IsABeginning()
    {
        (BookWords? begun, DiagnosticList found) = Read(WordsList.Of(WordsCheck.Missing(s_book, null)));
        Assert.Empty(found);
        Assert.Empty(begun!.Words);
        string filled = WordsList.Of(WordsCheck.Missing(s_book, null)).Replace("says: \"\"", "says: x", StringComparison.Ordinal);
        Assert.Equal(BookTexts.Of(s_book).Select(t => t.Text).Order(StringComparer.Ordinal), Read(filled).Words!.Words.Select(w => w.Text).Order(StringComparer.Ordinal));
    }

    /// <summary>Names stay the author's: what a name means cannot depend on the language.</summary>
    [Fact]
    public void In_Language_KeepsNames()
    {
        BookWords words = Read(Words).Words!;
        ClassBook book = s_book with { Languages = s_book.Languages.Add("es", words) };
        Assert.Equal(s_book.Items.Keys, book.In(book.TongueOf("es")).Items.Keys);
        using (book.TongueOf("es").Speak())
        {
            Assert.Equal("compartimento delantero", Say.Book("forward compartment"));
        }
    }

    private static (BookWords? Words, DiagnosticList Found) Read(string text, string path = "words/es.yaml")
    {
        DiagnosticList found = [];
        return (WordsReader.Read(s_book, new(path, text), [], found), found);
    }
}
