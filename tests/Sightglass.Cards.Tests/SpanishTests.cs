using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Language;
using Sightglass.Book.Model;
using Sightglass.Cards.Format;
using Sightglass.Cards.Names;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Story;

namespace Sightglass.Cards.Tests;

/// <summary>Cards in Spanish, names and all: the same program as the English card, or told where not.</summary>
public sealed class SpanishTests
{
    private const string Spanish = """
        Ficha: Vaciar un compartimento que pierde
        Para: mecánico; se avisa a: la mesa mecánica
        Hace falta: radio, lámpara
        Sea C el compartimento donde se ve combustible al pie de C, de entre delantero, central, trasero.

        # Lo que se ve, y lo que debe ser así al final.
        Se usa cuando: se ve combustible al pie de cualquier compartimento.
        No debe pasar nunca: el motor se queda sin combustible; un compartimento rebosa.
        Terminada cuando: el compartimento C está vacío y el motor marcha. Sigue así durante 10 min.

        1. Avise a la mesa mecánica: fuga de combustible en el compartimento {C}.
        Precaución: El combustible sobre el balasto es resbaladizo y arde. Puede caer. Aleje las llamas.
        2. Vaya al panel de combustible a la derecha.
        3. Compruebe que la mirilla de cada otro compartimento muestra espacio. Si no, vaya al paso 8.
        4. Cierre la válvula de retorno del compartimento C.
        5. Cierre la válvula de suministro de cada otro compartimento.
        6. Espere hasta ver que la mirilla del compartimento C muestra bajo, como máximo 45 min. Si no, vaya al paso 8.
        7. Abra la válvula de suministro de cada otro compartimento.
        8. Cierre la válvula de suministro del compartimento C.
        """;

    private static readonly (string Text, string Says)[] s_words =
    [
        ("mechanical", "mecánico"), ("mechanical desk", "mesa mecánica"), ("engineer", "maquinista"), ("conductor", "conductor"),
        ("forward", "delantero"), ("centre", "central"), ("aft", "trasero"), ("{name} compartment", "compartimento {name}"),
        ("{name} supply valve", "válvula de suministro del compartimento {name}"), ("{name} return valve", "válvula de retorno del compartimento {name}"),
        ("{name} sight glass, right", "mirilla del compartimento {name}, derecha"), ("{name} sight glass, left", "mirilla del compartimento {name}, izquierda"),
        ("fuel panel, right", "panel de combustible, derecha"), ("fuel panel, left", "panel de combustible, izquierda"),
        ("fuel is seen at the foot of the {name} compartment", "se ve combustible al pie del compartimento {name}"),
        ("engine starves", "el motor se queda sin combustible"), ("a compartment overflows", "un compartimento rebosa"), ("engine runs", "el motor marcha"),
        ("{name} compartment is empty", "el compartimento {name} está vacío"), ("low", "bajo"), ("room", "espacio"), ("throttle", "acelerador"), ("idle", "ralentí"),
        ("low fuel lamp", "lámpara de poco combustible"),
    ];

    private static readonly ClassBook s_book = With(Spanish);

    [Theory]
    [InlineData("forward", "delantero")]
    [InlineData("aft", "trasero")]
    public void Read_Spanish_IsTheSameProgram(string english, string spanish)
    {
        CardProgram one = CardCompiler.Compile(Read(Cards.Leak), s_book, english), other = CardCompiler.Compile(Read(Spanish), s_book, spanish);
        Assert.Equal(ProgramListing.Doings(one), ProgramListing.Doings(other));
    }

    [Fact]
    public void Check_SameProgram_FindsNothing() => Assert.Empty(Checked(Spanish));

    [Theory]
    [InlineData("4. Cierre la válvula de retorno", "4. Cierre la válvula de suministro", 4)]
    [InlineData("4. Cierre", "4. Abra", 4)]
    [InlineData("como máximo 45 min", "como máximo 40 min", 6)]
    [InlineData("muestra bajo", "no muestra bajo", 6)]
    [InlineData("al paso 8.\n4", "al paso 7.\n4", 3)]
    [InlineData("a la derecha", "a la izquierda", 2)]
    [InlineData("durante 10 min", "durante 5 min", 0)]
    [InlineData("; un compartimento rebosa", "", 0)]
    public void Check_AnotherProgram_IsToldAtItsStep(string right, string wrong, int step)
    {
        string text = Spanish.ReplaceLineEndings("\n").Replace(right, wrong, StringComparison.Ordinal);
        Diagnostic found = Assert.Single(Checked(text), d => d.Code == "T010");
        Assert.StartsWith(step == 0 ? "Ficha:" : $"{step}.", found.Span.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LeftOutNotice_IsTold() => Assert.Contains(Checked(string.Join('\n', Spanish.Split('\n').Where(l => !l.Contains("Precaución", StringComparison.Ordinal)))), d => d.Code == "T010");

    [Fact]
    public void Check_UnknownName_IsToldInTheTranslation() => Assert.Contains(Checked(Spanish.Replace("retorno", "retroceso", StringComparison.Ordinal)), d => d.Severity == Severity.Error && d.Span.Source!.Path.StartsWith("words/", StringComparison.Ordinal));

    [Fact]
    public void Check_NotTranslated_IsTold() => Assert.Contains(Checked(null), d => d.Code == "T009");

    /// <summary>A translation is worded like any card, by the lists and the measures of its language: 25 words where English has 20.</summary>
    [Theory]
    [InlineData("Vaya al panel de combustible a la derecha.", "Debería ir al panel de combustible a la derecha.", null)]
    [InlineData("El combustible sobre el balasto es resbaladizo y arde.", "El combustible que se ve sobre el balasto al pie de la máquina y de cada uno de los coches del tren es resbaladizo y arde como arde cualquier otro.", null)]
    [InlineData("El combustible sobre el balasto es resbaladizo y arde.", "El combustible que se ve sobre el balasto al pie de la máquina y de cada uno de los coches del tren es resbaladizo y arde como arde cualquier cosa que arde.", "L006")]
    [InlineData("Puede caer. Aleje las llamas.", "Es así.", "L009")]
    public void Check_Wording_IsThatOfTheLanguage(string right, string wrong, string? code)
    {
        Diagnostic[] found = [.. Checked(Spanish.Replace(right, wrong, StringComparison.Ordinal)).Where(d => d.Code[0] == 'L')];
        Assert.Equal(code is null ? [] : [code], found.Select(d => d.Code));
        Assert.All(found, d => Assert.Equal("words/es/leak.card", d.Span.Path));
    }

    /// <summary>A position agrees with its noun in Spanish: the way in which it was written stays.</summary>
    [Theory]
    [InlineData("la válvula de retorno del compartimento trasero está cerrada")]
    [InlineData("la válvula de retorno del compartimento trasero no está cerrada")]
    [InlineData("el acelerador está en ralentí")]
    [InlineData("la lámpara de poco combustible está encendida")]
    [InlineData("la lámpara de poco combustible luce")]
    public void Format_PositionThatAgrees_StaysAsItIs(string condition)
    {
        string text = $"Ficha: x\nPara: mecánico\nTerminada cuando: el motor marcha.\n\n1. Compruebe que {condition}. Si no, deténgase.\n";
        Assert.Equal(text, CardFormat.Format(Read(text.Replace("1. Compruebe", "1.   Compruebe", StringComparison.Ordinal))));
    }

    [Fact]
    public void Format_SpanishCard_StaysSpanish() => Assert.Equal(Spanish.ReplaceLineEndings("\n") + "\n", CardFormat.Format(Read(Spanish)));

    [Theory]
    [InlineData("Card: x", "en")]
    [InlineData("# comentario\n\nFicha: x", "es")]
    [InlineData("1. Open it.", null)]
    [InlineData("", null)]
    public void Of_Text_TellsTheLanguage(string text, string? code) => Assert.Equal(code, CardLanguages.Of(new SourceText("x.card", text))?.Code);

    [Theory]
    [InlineData("Cierre la válvula de retorno del compartimento trasero.", "Usted cerró la válvula de retorno del compartimento trasero.")]
    [InlineData("Vaya al panel de combustible a la derecha.", "Usted fue al panel de combustible a la derecha.")]
    [InlineData("Ponga el acelerador en ralentí.", "Usted puso el acelerador en ralentí.")]
    [InlineData("Compruebe que la lámpara de poco combustible luce. Si no, deténgase.", "Usted comprobó, y era así: la lámpara de poco combustible luce.")]
    [InlineData("Avise al maquinista y a la mesa mecánica: listo.", "Usted avisó al maquinista y a la mesa mecánica: listo.")]
    [InlineData("Pida al maquinista: ponga el acelerador en ralentí. Espere la respuesta, como máximo 2 min. Si no, deténgase.", "Usted pidió al maquinista: «ponga el acelerador en ralentí», y oyó que estaba hecho.")]
    public void Tell_Operation_IsASpanishSentence(string step, string expected)
    {
        using IDisposable spoken = s_book.TongueOf("es").Speak();
        CardProgram program = CardCompiler.Compile(Read($"Ficha: x\nPara: mecánico\nTerminada cuando: el motor marcha.\n\n1. {step}\n"), s_book);
        Assert.Equal(expected, new CardStory(program, SpanishForms.Language).Tell(0));
    }

    [Theory]
    [InlineData("válvula de retorno", "la válvula de retorno")]
    [InlineData("llaves de corte", "las llaves de corte")]
    [InlineData("pared trasera de la cabina", "la pared trasera de la cabina")]
    [InlineData("parte delantera", "la parte delantera")]
    [InlineData("motor", "el motor")]
    [InlineData("agua de refrigeración", "el agua de refrigeración")]
    [InlineData("conexión", "la conexión")]
    [InlineData("frenos", "los frenos")]
    public void WithArticle_Name_TakesItsOwn(string name, string expected) => Assert.Equal(expected, SpanishForms.Language.WithArticle(name));

    [Theory]
    [InlineData("va a el panel de el lado", "va al panel del lado")]
    [InlineData("De el todo", "Del todo")]
    [InlineData("para elegir de elementos a elevar", "para elegir de elementos a elevar")]
    public void Joined_Words_AreWrittenAsOne(string text, string expected) => Assert.Equal(expected, SpanishForms.Language.Joined(text));

    private static Tree.Card Read(string text)
    {
        DiagnosticList found = [];
        Tree.Card? card = CardReader.Read(new SourceText("test.card", text), s_book, found);
        Assert.True(card is { HasErrors: false }, string.Join('\n', found));
        return card;
    }

    private static ClassBook With(string? translation)
    {
        ClassBook book = TestBook.Book with { CardTexts = [new SourceText("cards/leak.card", Cards.Leak)] };
        BookWords words = new(Tongue.Spanish, s_words.Select(w => new BookWord(w.Text, w.Says, default)), translation is null ? [] : [new SourceText("words/es/leak.card", translation)]);
        return book with { Languages = book.Languages.Add("es", words) };
    }

    private static DiagnosticList Checked(string? translation)
    {
        DiagnosticList found = [];
        ClassBook book = With(translation);
        TranslatedCards.Check(book, book.Languages["es"], found);
        return found;
    }
}
