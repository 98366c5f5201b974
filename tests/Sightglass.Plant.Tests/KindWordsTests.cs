using Sightglass.Basics.Language;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Tests;

/// <summary>The words of kinds are data, so that no reader of the program finds them: here each is held against the language's files.</summary>
public sealed class KindWordsTests
{
    private static IEnumerable<string> Words => KindLibrary.Catalog.Sheets.Append(KindSheet.Described).SelectMany(WordsOf).Concat(WorldInput.All.Select(i => i.Name)).Append("yes").Append("no").Distinct().Order(StringComparer.Ordinal);

    [Fact]
    public void Words_OfEveryKind_HaveSpanish()
    {
        string missing = string.Join('\n', Words.Where(w => !Tongue.Spanish.Words.ContainsKey("word|" + w)));
        Assert.True(missing.Length == 0, missing);
    }

    /// <summary>A word that a sheet declares no more is said no more.</summary>
    [Fact]
    public void Spanish_OfWhatNoKindDeclares_IsOfAnotherPart()
    {
        HashSet<string> words = [.. Words];
        Assert.True(words.Count > 100);
        Assert.Equal("válvula de mano", Tongue.Spanish.Word("hand valve"));
        Assert.Equal(["abierta", "abierto"], Tongue.Spanish.WaysOf("open"));
    }

    [Theory]
    [InlineData("pressure of main reservoir", "presión de main reservoir")]
    [InlineData("grade", "pendiente")]
    [InlineData("a control that no kind knows", "a control that no kind knows")]
    public void QuantityWords_OfANameOfAPlan_SayTheQuantityAndLeaveTheItem(string name, string says)
    {
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal(says, QuantityWords.Of(name));
        }

        Assert.Equal(name, QuantityWords.Of(name));
    }

    private static IEnumerable<string> WordsOf(KindSheet sheet) =>
    [
        sheet.Name,
        .. sheet.Parameters.SelectMany(WordsOf),
        .. sheet.Ports.Select(p => p.Name),
        .. sheet.Positions,
        .. sheet.Quantities.Select(q => q.Name),
        .. sheet.Faults.SelectMany(f => f.Parameters.SelectMany(WordsOf).Append(f.Name).Append(f.Doc)),
    ];

    private static IEnumerable<string> WordsOf(KindParameter parameter) =>
        parameter.Type == ParameterType.Choice ? parameter.Choices.Append(parameter.Name) : [parameter.Name];
}
