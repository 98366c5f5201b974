using System.Text;

namespace Sightglass.Architecture.Tests;

/// <summary>docs/diagnostics.md is made from the messages in the code; set SIGHTGLASS_ACCEPT=1 to write it anew, then read the difference.</summary>
public sealed class DiagnosticsPageTests
{
    private const string Page = "docs/diagnostics.md";

    /// <summary>Families of codes in the order of the page. Those of the book have their own table, with examples, in docs/book.md.</summary>
    private static readonly (char Letter, string Title)[] s_families =
    [
        ('Q', "Values"), ('F', "Formulas"), ('P', "The plant"), ('W', "Situations"), ('R', "Published rules"), ('C', "Cards: reading"), ('L', "Cards: good writing"), ('T', "Other languages"),
    ];

    [Fact]
    public void Page_OfTheRepository_IsMadeFromTheMessages()
    {
        string path = Path.Combine(RepositoryFiles.Root, Page);
        if (Environment.GetEnvironmentVariable("SIGHTGLASS_ACCEPT") == "1")
        {
            File.WriteAllText(path, Write());
        }

        Assert.True(File.ReadAllText(path) == Write(), $"{Page} is stale: run this test with SIGHTGLASS_ACCEPT=1 and commit it.");
    }

    [Fact]
    public void Codes_InTheCode_AreOfAKnownFamily() =>
        Assert.Empty(MessageTexts.All.Select(r => r.Code).Where(c => c[0] != 'B' && s_families.All(f => f.Letter != c[0])).Distinct());

    [Fact]
    public void Codes_OfTheBook_StandInItsGuide()
    {
        string guide = RepositoryFiles.Read("docs/book.md");
        Assert.Empty(MessageTexts.All.Select(r => r.Code).Where(c => c[0] == 'B').Distinct().Where(c => !guide.Contains($"| {c} |", StringComparison.Ordinal)));
    }

    /// <summary>One code means one thing: it is given out by one project.</summary>
    [Fact]
    public void Codes_BelongToOneProject() =>
        Assert.Empty(MessageTexts.All.GroupBy(r => r.Code).Where(g => g.Select(r => r.File.Split('/')[1]).Distinct().Count() > 1).Select(g => g.Key));

    /// <summary>Whoever gives out a code says in plain words what is wrong: the page has no empty row.</summary>
    [Fact]
    public void Codes_HaveWords() =>
        Assert.Empty(MessageTexts.All.Where(r => r.Code[0] != 'B').GroupBy(r => r.Code).Where(g => g.All(r => r.Wrong.Count + r.Right.Count == 0)).Select(g => g.Key));

    private static string Write()
    {
        StringBuilder page = new("""
            # Codes of messages

            A message reads `file:line:column: code: what is wrong; what would be right`. Codes are stable. This page is made from the messages in the code by the
            architecture tests; `…` stands for a name, a number or a list. Codes B… (files, sections, items, references of a class book) stand with examples in
            [book.md](book.md); what a card may say, in [cards.md](cards.md).

            """);
        foreach ((char letter, string title) in s_families)
        {
            page.Append($"\n## {title}\n\n| code | what is wrong | what would be right |\n| --- | --- | --- |\n");
            foreach (IGrouping<string, MessageTexts.Row> code in MessageTexts.All.Where(r => r.Code[0] == letter).GroupBy(r => r.Code))
            {
                string[] wrong = [.. code.SelectMany(r => r.Wrong).Distinct()];
                string[] right = [.. code.SelectMany(r => r.Right).Distinct()];
                page.Append($"| {code.Key} | {Cell(wrong)} | {Cell(right)} |\n");
            }
        }

        return page.ToString();
    }

    /// <summary>A lone word is the sort of thing that a name was looked for among.</summary>
    private static string Cell(string[] texts) => string.Join("<br>", texts.Select(t => (t.Contains(' ', StringComparison.Ordinal) ? t : $"no {t} is called `…`").Replace("|", "\\|", StringComparison.Ordinal)));
}
