using System.Text.RegularExpressions;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Format;
using Sightglass.Cards.Programs;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Tests;

/// <summary>docs/cards.md is the reference: every example in it is executed, every form and every code is in it.</summary>
public sealed partial class CardsManualTests
{
    private static readonly string s_root = Root();
    private static readonly string s_manual = File.ReadAllText(Path.Combine(s_root, "docs", "cards.md")).ReplaceLineEndings("\n");

    public static TheoryData<int, string, string> Examples()
    {
        TheoryData<int, string, string> data = [];
        foreach (Match match in Block().Matches(s_manual))
        {
            int line = s_manual.AsSpan(0, match.Index).Count('\n') + 1;
            data.Add(line, match.Groups["codes"].Value.Trim(), match.Groups["text"].Value);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Manual_Example_DoesWhatItSays(int line, string codes, string text)
    {
        string whole = text.StartsWith("Card:", StringComparison.Ordinal) ? text : Cards.Head + text;
        (Card? card, DiagnosticList found) = Cards.Read(whole);
        Assert.NotNull(card);
        if (codes.Length > 0)
        {
            CardLint.Check(card, TestBook.Book, found);
            Assert.All(codes.Split(' '), c => Assert.Contains(found, d => d.Code == c));
            Assert.All(found.Where(d => d.Severity == Severity.Error), d => Assert.Contains(d.Code, codes, StringComparison.Ordinal));
            return;
        }

        Assert.True(found.Count == 0, $"docs/cards.md:{line}: {string.Join('\n', found)}");
        Assert.Equal(CardFormat.Format(card), CardFormat.Format(Cards.Read(CardFormat.Format(card)).Card!));
        string[] words = [.. CardCompiler.Bindings(card, TestBook.Book).Select(b => b.Word)];
        foreach (string? word in words.Length == 0 ? [null] : words.Select(w => (string?)w))
        {
            CardProgram program = CardCompiler.Compile(card, TestBook.Book, word);
            Assert.IsType<CardOp.Done>(Assert.Single(program.Ops, o => o is CardOp.Done));
        }
    }

    [Fact]
    public void Manual_Examples_AreMany() => Assert.InRange(Examples().Count, 25, 200);

    [Fact]
    public void Manual_EveryFormOfEnglish_IsInIt()
    {
        string manual = Bare(s_manual);
        foreach (SentenceForm form in EnglishForms.Language.Forms.Where(f => f.Pattern.LiteralCount > 0))
        {
            string readable = form.Pattern.Readable();
            bool found = manual.Contains(Bare(readable), StringComparison.Ordinal) || manual.Contains(Optional().Replace(readable, ""), StringComparison.Ordinal);
            Assert.True(found, $"docs/cards.md does not show `{readable}`");
        }
    }

    private static string Bare(string text) => text.Replace("[", "", StringComparison.Ordinal).Replace("]", "", StringComparison.Ordinal);

    [Fact]
    public void Manual_EveryCode_IsInIt()
    {
        IEnumerable<string> codes = Directory.EnumerateFiles(Path.Combine(s_root, "src", "Sightglass.Cards"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .SelectMany(f => Code().Matches(File.ReadAllText(f)).Select(m => m.Groups[1].Value))
            .Distinct();
        Assert.All(codes, c => Assert.Contains($"| {c} ", s_manual, StringComparison.Ordinal));
    }

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Sightglass.slnx")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run inside the repository.");
    }

    [GeneratedRegex(@"^```card(?:-error(?<codes>[^\n]*))?\n(?<text>.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Block();

    [GeneratedRegex(@"\[[^\]]*\]")]
    private static partial Regex Optional();

    [GeneratedRegex("\"([CL][0-9]{3})\"")]
    private static partial Regex Code();
}
