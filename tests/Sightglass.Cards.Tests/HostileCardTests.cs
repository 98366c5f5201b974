using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Format;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>Texts that would hold up a careless reader: each is read, checked and printed in bounded work. The memory asked for stands for the work.</summary>
public sealed class HostileCardTests
{
    private const string Head = Cards.Head;
    private const long MostBytes = 250L << 20;

    private static readonly string s_words = string.Join(", ", Enumerable.Range(0, 190).Select(i => "w" + i));

    public static TheoryData<string, string> Texts => new()
    {
        { "one long name", Head + "1. Open " + Repeat("the valve to the valve, and ", 56) },
        { "many ands", Head + "1. Check that " + Repeat("fuel is smelled and ", 95) + "x. If not, stop." },
        { "ands and ors", Head + "1. Check that " + Repeat("a or b and ", 95) + "x. If not, stop." },
        { "many semicolons", Head + "Must never: " + Repeat("engine starves; ", 130) + "x." },
        { "if in if", Head + "1. " + Repeat("If fuel is smelled, ", 75) + "wait 5 s." },
        { "if in if of nothing", Head + "1. " + Repeat("If x, ", 130) + "wait 5 s." },
        { "many commas", Head + "1. If " + Repeat("x, ", 198) + "wait 5 s." },
        { "ask in ask", Head + "1. " + Repeat("Ask the engineer to ", 95) + "wait 5 s." },
        { "many tos", Head + "1. Ask " + Repeat("to ask ", 195) + "wait 5 s." },
        { "ask in if in ask", Head + "1. " + Repeat("If x, ask x to ", 60) + "wait." },
        { "turn to to to", Head + "1. Turn " + Repeat("x to ", 195) + "open." },
        { "until until", Head + "1. Hold x at " + Repeat("at x until ", 130) + "open." },
        { "from from", Head + "1. Walk from " + Repeat("x to from ", 130) + "open." },
        { "at at", Head + "1. Look for " + Repeat("x at ", 190) + "open." },
        { "is is", Head + "1. Check that " + Repeat("is ", 390) + "x. If not, stop." },
        { "then then", Head + "1. " + Repeat("Open x then ", 130) + "x." },
        { "late ifs", Head + "1. Close x " + Repeat("if x ", 190) },
        { "if not, if not", Head + "1. Open x. " + Repeat("If not, if not, ", 80) },
        { "many sentences", Head + "1. " + Repeat("Open. ", 190) },
        { "list in list", Head + "1. In any order: " + Repeat("In any order: ", 90) },
        { "round in round", Head + "1. " + Repeat("For each car: ", 90) + "wait 5 s." },
        { "round in round of lists", Head + "1. For each car:\n" + Repeat("   - For each compartment: For each truck: For each car: Go to the truck, right of the car.\n", 500) },
        { "many rounds", Head + string.Concat(Enumerable.Range(1, 2500).Select(i => i % 2 == 1 ? $"{i}. For each car:\n" : "   - For each truck: Go to the truck, right of the car.\n")) },
        { "choice in choice", Head + "1. Do one of: " + Repeat("Do one of: If x, ", 60) },
        { "many numbers", Head.Replace("the engine runs", Repeat("P1 is at most 5 % and ", 60) + "x") + "1. Read the cab fuel gauge as P1." },
        { "one step many times", Head + Repeat("1. Open the aft supply valve.\n", 6000) },
        { "many steps", Head + string.Concat(Enumerable.Range(1, 5500).Select(i => $"{i}. Open the aft supply valve.\n")) },
        { "many errors", Head + Repeat("1. If x, x.\n", 14000) },
        { "many lines", Head + Repeat("x\n", 99000) },
        { "many empty lines", Head + Repeat("\n", 199000) },
        { "many letters", Head + string.Concat(Enumerable.Range(0, 4000).Select(i => $"Let C{i} be the compartment, one of a, b.\n")) + "1. Wait 5 s." },
        { "many words of a letter", Head + $"Let C be the compartment, one of {s_words}.\n" + string.Concat(Enumerable.Range(1, 4000).Select(i => $"{i}. Open the supply valve of C.\n")) },
        { "many words, each", Head + $"Let C be the compartment, one of {s_words}.\n" + string.Concat(Enumerable.Range(1, 2500).Select(i => $"{i}. Open the supply valve of each compartment.\n")) },
        { "many notices", Head + Repeat("Caution: Fuel burns. You can fall. Keep away.\n", 4000) + "1. Wait 5 s." },
        { "one long word", Head + "1. Open " + new string('x', 190000) + "." },
        { "many braces", Head + "1. Tell the engineer: " + Repeat("{", 190000) },
        { "many holes", Head + "1. Tell the engineer: " + Repeat("{P}", 60000) },
        { "many parentheses", Head + "1. Read the cab fuel gauge as P.\n2. Tell the engineer: {" + Repeat("(", 60000) + "P" },
        { "a long sum", Head + "1. Read the cab fuel gauge as P.\n2. Tell the engineer: {" + Repeat("P+", 90000) + "P}" },
        { "a long comparison", Head + "1. Read the cab fuel gauge as P.\n2. Check that " + Repeat("P + ", 190) + "P is at most 5 %. If not, stop." },
        { "many calls", Head + string.Concat(Enumerable.Range(1, 3000).Select(i => $"{i}. Do card \"Close off a compartment\" with aft.\n")) },
        { "jumps across", Head + string.Concat(Enumerable.Range(1, 5000).Select(i => $"{i}. If fuel is smelled, go to step {5001 - i}.\n")) },
        { "many repetitions", Head + string.Concat(Enumerable.Range(1, 2500).Select(i => i % 2 == 1 ? $"{i}. Wait 5 s.\n" : $"{i}. Repeat step {i - 1} until fuel is smelled, at most 3 times.\n")) },
        { "many at the same time", Head + "1. At the same time:\n" + Repeat("   - Engineer: Wait 5 s.\n", 7000) },
        { "many quotes", Head + "1. Do card " + Repeat("\" ", 390) },
    };

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void Read_HostileText_IsBounded(string name, string text)
    {
        foreach (string tried in new[] { text, Cut(text) })
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            (Card? card, DiagnosticList found) = Cards.Read(tried);
            if (card is not null)
            {
                CardLint.Check(card, TestBook.Book, found);
                _ = CardFormat.Format(card);
            }

            long bytes = GC.GetAllocatedBytesForCurrentThread() - before;
            Assert.True(bytes < MostBytes, $"{name}: {bytes >> 20} MB");
            Assert.All(found, d => Assert.True(d.ToString().Length < 1_000, name));
        }
    }

    [Theory]
    [InlineData("many letters", "C069")]
    [InlineData("many words of a letter", "C069")]
    [InlineData("many calls", "C070")]
    [InlineData("many lines", "C002")]
    [InlineData("many steps", "C002")]
    public void Read_TooMuch_SaysWhat(string name, string code)
    {
        string text = Texts.Single(t => t.Data.Item1 == name).Data.Item2;
        Assert.Contains(Cards.Read(code == "C002" ? text : Cut(text)).Found, d => d.Code == code);
    }

    /// <summary>Cards that call cards twenty times each, six deep, would be sixty-four million steps.</summary>
    [Fact]
    public void Read_CardsThatCallCards_EndsSoon()
    {
        string Calling(int i) => $"Card: Level {i}\nFor: mechanical\nDone when: the engine runs.\n\n" + string.Concat(Enumerable.Range(1, 20).Select(n => i == 6 ? $"{n}. Wait 5 s.\n" : $"{n}. Do card \"Level {i + 1}\".\n"));
        Book.Model.ClassBook book = TestBook.Book with { CardTexts = [.. Enumerable.Range(0, 7).Select(i => new SourceText($"{i}.card", Calling(i)))] };
        long before = GC.GetAllocatedBytesForCurrentThread();
        DiagnosticList found = [];
        CardReader.Read(book.CardTexts[0], book, found);
        Assert.Contains(found, d => d.Code is "C070" or "C053");
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < MostBytes);
    }

    /// <summary>As much of it as is read at all.</summary>
    private static string Cut(string text)
    {
        string[] lines = text[..Math.Min(text.Length, CardReader.MostCharacters)].Split('\n');
        return string.Join('\n', lines.Take(CardReader.MostLines - 1));
    }

    private static string Repeat(string piece, int count) => new StringBuilder().Insert(0, piece, count).ToString();
}
