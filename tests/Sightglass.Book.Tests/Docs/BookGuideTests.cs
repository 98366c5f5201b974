using System.Text.RegularExpressions;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Committed;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;

namespace Sightglass.Book.Tests.Docs;

/// <summary>docs/book.md: its examples are one book that reads and runs, its table is made from the code.</summary>
public partial class BookGuideTests
{
    private const string Name = "docs/book.md";
    private const string Begin = "<!-- generated from BookCodes and the verified lines of the tests: diagnostics -->\n";
    private const string End = "<!-- end -->\n";

    [Fact]
    public void Examples_OfTheGuide_AreOneBookWithoutAFinding()
    {
        DiagnosticList found = [];
        ClassBook? book = BookReader.Read(Examples(), [], KindLibrary.Catalog, found);
        Assert.Empty(found);
        Assert.Equal("Sandpiper", book!.Title);
        Assert.Equal(0.02, book.For("4107").Items["sight glass, right"].Reading!.Resolution, 1e-12);
        Assert.NotNull(PlanCompiler.Compile(book, found));
        Assert.NotNull(PlanCompiler.Compile(book.Coupled("local"), found));
        Assert.Empty(found);
    }

    [Fact]
    public void Examples_OfTheGuide_ShowEverySection()
    {
        string all = string.Concat(Examples().Select(e => e.Text));
        string[] sections =
        [
            "book", "places", "legs", "roles", "systems", "items", "assemblies", "facts", "signs", "hazards", "protections", "measures", "walks", "ends", "road numbers", "silhouettes", "cars", "trains", "bets", "drills", "routes", "running", "recordings", "situations",
        ];
        Assert.All(sections, s => Assert.Contains($"{s}:", all, StringComparison.Ordinal));
    }

    [Fact]
    public void Table_OfTheGuide_IsGeneratedFromTheCodes()
    {
        string text = File.ReadAllText(RepositoryFile.PathOf(Name));
        int from = text.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length;
        int to = text.IndexOf(End, StringComparison.Ordinal);
        RepositoryFile.AssertIs(Name, text[..from] + Table() + text[to..]);
    }

    private static string Table() =>
        "| code | | what it says | example |\n| --- | --- | --- | --- |\n" + string.Concat(BookCodes.All.Select(Row));

    private static string Row(BookCode code)
    {
        string? line = CodeExamples.Of(code.Code);
        string example = line is null ? "" : $"`` {line.Replace("|", "\\|", StringComparison.Ordinal)} ``";
        return $"| {code.Code} | {code.Severity.ToString().ToLowerInvariant()} | {code.Meaning} | {example} |\n";
    }

    private static SourceText[] Examples() =>
        [.. Block().Matches(File.ReadAllText(RepositoryFile.PathOf(Name))).Select((m, i) => new SourceText($"example{i + 1}.yaml", m.Groups[1].Value))];

    [GeneratedRegex("^```yaml\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
