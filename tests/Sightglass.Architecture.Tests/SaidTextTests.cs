using System.Text.RegularExpressions;

namespace Sightglass.Architecture.Tests;

/// <summary>Every text that a person reads is there in every language: source, the language's own files and the compiled program itself.</summary>
public sealed partial class SaidTextTests
{
    private const string Word = "word|";

    /// <summary>Projects whose texts are all said through <c>Say</c> and all translated. A project comes in when it is done, and stays.</summary>
    private static readonly string[] s_done =
    [
        "Sightglass.Cli", "Sightglass.Drawing", "Sightglass.Paper", "Sightglass.Plant", "Sightglass.Storage", "Sightglass.Training", "Sightglass.Trials", "Sightglass.Web", "Sightglass.World",
    ];

    private static readonly IReadOnlyList<SaidTexts> s_said = SaidTexts.OfSources();

    private static readonly IReadOnlyList<SpokenWords> s_spanish = SpokenWords.Of("es");

    [Fact]
    public void Texts_OfProjectsThatAreDone_HaveSpanish()
    {
        HashSet<string> known = [.. s_spanish.SelectMany(w => w.Entries).Select(e => e.Key)];
        None(from said in s_said
             where s_done.Contains(said.Project)
             from key in said.Keys
             where !known.Contains(key) && !known.Contains(WordOf(key))
             select $"{said.Project}: {key}");
    }

    /// <summary>The words with which names of a train are put together, in Basics, are looked for by those who read a book's words, not said.</summary>
    [Fact]
    public void Spanish_OfProjectsThatAreDoneAndOfOtherParts_IsSaidSomewhere()
    {
        HashSet<string> said = [.. s_said.SelectMany(s => s.Keys).SelectMany(k => new[] { k, WordOf(k) })];
        None(from words in s_spanish
             where words.Project != "Basics"
             where s_done.Contains("Sightglass." + words.Project) || s_said.All(s => s.Project != "Sightglass." + words.Project)
             from entry in words.Entries
             where !entry.Key.StartsWith(Word, StringComparison.Ordinal) && !said.Contains(entry.Key)
             select $"{words.File}: {entry.Key}");
    }

    [Fact]
    public void Spanish_OfATextWithGaps_HasTheSameGaps() =>
        None(from words in s_spanish
             from entry in words.Entries
             where !SaidTexts.GapsOf(entry.Key).SequenceEqual(SaidTexts.GapsOf(entry.Text))
             select $"{words.File}: {entry.Key} = {entry.Text}");

    [Fact]
    public void Spanish_OfEveryFile_StandsInOrderOnceAndIsNotEmpty() =>
        None(from words in s_spanish
             from pair in words.Entries.Zip(words.Entries.Skip(1).Append((Key: "\uFFFF", Text: "")))
             where string.CompareOrdinal(pair.First.Key, pair.Second.Key) >= 0 || pair.First.Text.Trim().Length == 0
             select $"{words.File}: {pair.First.Key} = “{pair.First.Text}”, before {pair.Second.Key}");

    [Fact]
    public void Spanish_OfOneTextInTwoFiles_IsTheSame() =>
        None(from entry in s_spanish.SelectMany(w => w.Entries)
             group entry.Text by entry.Key into same
             where same.Distinct().Count() > 1
             select $"{same.Key} = {string.Join(" / ", same)}");

    [Fact]
    public void Say_IsCalledWithTextsThatStandThere() => None(s_said.SelectMany(s => s.Unclear));

    /// <summary>The reader of instructions against a plain search of the source, which knows nothing of them.</summary>
    [Fact]
    public void Texts_ReadFromTheProgram_AreThoseOfItsSource()
    {
        HashSet<string> said = [.. s_said.SelectMany(s => s.Keys)];
        None(from file in RepositoryFiles.Code("src")
             from Match match in PlainText().Matches(RepositoryFiles.Read(file))
             let text = Regex.Unescape(match.Groups["text"].Value)
             where !said.Contains(text) && !said.Contains(text.Replace("{{", "{", StringComparison.Ordinal))
             select $"{file}: {text}");
    }

    [Theory]
    [InlineData("Go to {0}.", "{0}")]
    [InlineData("{1:0.0} m of {0}, {1:0.0} m", "{0} {1:0.0}")]
    [InlineData("{{0}} and {0,-3}", "{0,-3}")]
    public void Gaps_OfAText_AreFoundOnceInOrder(string text, string gaps) => Assert.Equal(gaps, string.Join(' ', SaidTexts.GapsOf(text)));

    /// <summary>Fails with every line in full.</summary>
    private static void None(IEnumerable<string> wrong)
    {
        string told = string.Join('\n', wrong);
        Assert.True(told.Length == 0, told);
    }

    /// <summary>A word with a sense of its own may do with the word's usual translation.</summary>
    private static string WordOf(string key) => key.IndexOf('|', StringComparison.Ordinal) is > 0 and var at ? key[(at + 1)..] : key;

    /// <summary>A text without gaps, or with nothing in its gaps that this pattern would have to understand.</summary>
    [GeneratedRegex("""Say\.(?:It\(|With\(\$)"(?<text>(?:[^"\\{]|\\.)*)"\)""")]
    private static partial Regex PlainText();
}
