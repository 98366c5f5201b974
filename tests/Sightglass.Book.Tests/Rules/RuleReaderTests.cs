using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Rules;
using Sightglass.Book.Schema;
using Sightglass.Book.Tests.Committed;
using Sightglass.Book.Tests.Hostile;
using Sightglass.Book.Tests.Schema;

namespace Sightglass.Book.Tests.Rules;

/// <summary>Sets of published rules: what is read, what is refused and how it is told.</summary>
public class RuleReaderTests
{
    private const string Head = """
        rules: Harbour rules
        edition: second
        quantities:
          pump pressure: { shown in: psi }
          relief setting: { shown in: psi }
          tank length: { shown in: m }
          pump runs: {}
        rows:

        """;

    private const string Good = Head + """
          1(a):
            title: Relief valve
            limit: Not more than 10 psi above the pump.
            confidence: high
            value: relief setting
            at most: pump pressure + 10 psi
          1(b):
            title: Leakage
            limit: Not more than 2 psi a minute.
            confidence: medium
            edition: first
            test: { begins when: not pump runs, settles: 10 s, lasts: 2 min, average fall of: pump pressure }
            at most: 2 psi/min
          2:
            title: Tank
            limit: Shorter than 3 m where the pump runs.
            confidence: high
            holds: tank length < 3 m or not pump runs
          3: { title: Care, limit: People look at it., confidence: high }

        """;

    [Fact]
    public void Read_ASet_GivesRowsInTheOrderOfTheFile()
    {
        RuleSet set = Read(Good, out DiagnosticList found)!;
        Assert.Empty(found);
        Assert.Equal(["1(a)", "1(b)", "2", "3"], set.Rows.Select(r => r.Paragraph));
        Assert.Equal(["second", "first", "second", "second"], set.Rows.Select(r => r.Edition));
        Assert.Equal(["psi", "psi/min", "1", "1"], set.Rows.Select(r => r.Unit.Symbol));
        Assert.Equal([true, true, true, false], set.Rows.Select(r => r.IsOfTheMachine));
        Assert.Equal((10, 120), (set.Rows[1].Test!.Settles, set.Rows[1].Test!.Lasts));
        Assert.Equal(["pump runs", "pump pressure"], set.Rows[1].Names.Select(n => n.Name));
    }

    [Theory]
    [InlineData("  4: { title: T, limit: L, confidence: high, value: pump presure, at most: 3 psi }", "F007: unknown name `pump presure`; did you mean `pump pressure`?")]
    [InlineData("  4: { title: T, limit: L, confidence: high, value: pump pressure, at most: 3 m }", "F011: the formula gives a length; expected a pressure")]
    [InlineData("  4: { title: T, limit: L, confidence: high, value: pump pressure }", "R004: `value` is held against nothing; add `at most: …` or `at least: …`")]
    [InlineData("  4: { title: T, limit: L, confidence: high, at most: 3 psi }", "R005: `at most` limits nothing; add `value: …`, or a `test:` that measures it")]
    [InlineData("  4: { title: T, limit: L, confidence: high, value: pump pressure, holds: pump runs, at most: 3 psi }", "R006: the row has `holds` beside `value`; keep one of them")]
    [InlineData("  4: { title: T, limit: L, confidence: high, test: { begins when: pump runs, lasts: 1 s }, at most: 3 psi }", "R007: the test makes no single number of what it follows; write one of `average fall of`")]
    [InlineData("  4: { title: T, limit: L, confidence: high, test: { begins when: pump runs, lasts: 1 s, least of: pump pressure, greatest of: pump pressure }, at most: 3 psi }", "R007")]
    [InlineData("  4: { title: T, limit: L, confidence: high, test: { begins when: pump pressure, lasts: 1 s, least of: pump pressure }, at most: 3 psi }", "F010: `pump pressure` is a pressure, not true or false")]
    [InlineData("  4: { title: T, limit: L, confidence: high, test: { begins when: pump runs, lasts: 0 s, least of: pump pressure }, at most: 3 psi }", "B039: `lasts` is `0 s`; it must be more than zero")]
    [InlineData("  4: { title: T, limit: L, confidence: high, test: { begins when: pump runs, lasts: 1 psi, least of: pump pressure }, at most: 3 psi }", "Q003")]
    [InlineData("  4: { title: T, limit: L, confidence: low }", "B035: `low` is not possible for `confidence`; possible are: `high`, `medium`")]
    [InlineData("  4: { title: T, limit: L }", "B031: the row `4` lacks `confidence`")]
    [InlineData("  4: { titel: T, limit: L, confidence: high }", "B030: unknown key `titel` in the row `4`; did you mean `title`?")]
    [InlineData("  4/x: { title: T, limit: L, confidence: high }", "R003: `4/x` cannot name a row; write the paragraph")]
    [InlineData("  1(a): { title: T, limit: L, confidence: high }", "B019: `1(a)` stands here a second time; the first is at rules.yaml:9:3")]
    [InlineData("row: {}", "B030: unknown key `row` in a file of rules; did you mean `rows`?")]
    [InlineData("---\nrules: Again", "B033: the key `rules` is declared a second time; the first is at rules.yaml:1:1")]
    [InlineData("---\nquantities: { pump speed: { shown in: rmp } }", "B042: unknown unit `rmp`")]
    [InlineData("---\nquantities: { pump speed: { shown in: rpm } }", "R008 (warning): no row speaks of `pump speed`")]
    [InlineData("---\nrows: { '1(a)': { title: T, limit: L, confidence: high } }", "B033: row `1(a)` is declared a second time; the first is at rules.yaml:9:3")]
    public void Read_WhatIsWrong_IsToldWithItsPlace(string added, string told)
    {
        Read(Good + added + "\n", out DiagnosticList found);
        string line = Assert.Single(found, d => d.ToString().Contains(told, StringComparison.Ordinal)).ToString();
        Assert.Matches(@"^rules\.yaml:\d+:\d+: ", line);
    }

    [Fact]
    public void Read_SeveralThingsWrong_AllAreTold()
    {
        RuleSet? set = Read(Head + """
              1: { title: T, limit: L, confidence: high, value: pump presure, at most: 3 psi }
              2: { title: T, limit: L, confidence: perhaps }
              3: { title: T, confidence: high, at least: 3 psi }
            """, out DiagnosticList found);
        Assert.Null(set);
        Assert.Equal(
            ["rules.yaml:9:53: F007", "rules.yaml:10:40: B035", "rules.yaml:11:3: B031", "rules.yaml:11:36: R005"],
            found.Select(d => $"{d.Span}: {d.Code}"));
    }

    [Theory]
    [InlineData("", "B031")]
    [InlineData("42", "B032")]
    [InlineData("rules: [", "B011")]
    [InlineData("rules: A\nedition: B\nrows: 3", "B032")]
    [InlineData("rules: A\nedition: B\nrows: { a: 3 }", "B032")]
    [InlineData("rules: A\nedition: B\nrows: { a: { title: T, limit: L, confidence: high, test: 3, at most: 3 } }", "B032")]
    [InlineData("rules: &a A\nedition: *a", "B016")]
    [InlineData("rules: !!int A", "B017")]
    [InlineData("rules: A\nedition: B\nquantities: { and: {} }", "B038")]
    [InlineData("rules: A\nedition: B\nquantities: { 'a/b': { shown in: psi } }", "B038")]
    public void Read_HostileTexts_AreRefused(string text, string code)
    {
        Assert.Null(Read(text, out DiagnosticList found));
        Assert.Contains(found, d => d.Code == code);
    }

    [Fact]
    public void Read_DeepAndLongTexts_AreRefusedWithinLimits()
    {
        string row(string formula) => Head + $"  1: {{ title: T, limit: L, confidence: high, holds: \"{formula}\" }}\n";
        Assert.Null(Read(row(new string('(', 20_000)), out _));
        Assert.Null(Read(row(string.Join(" and ", Enumerable.Repeat("pump runs", 5_000))), out _));
        Assert.Null(Read(row(string.Concat(Enumerable.Repeat("not ", 300)) + "pump runs"), out _));
        Assert.Null(Read("rules: A\nedition: B\nrows: " + new string('[', 100_000), out _));
        Assert.Null(Read("rules: A\nedition: B\nrows:\n" + string.Concat(Enumerable.Range(0, 60_000).Select(i => $"  {i}: {{ title: T }}\n")), out DiagnosticList found));
        Assert.InRange(found.Count, 1, 1002);
    }

    /// <summary>Whatever line is left out or cut in two, the rest is read or refused with places; nothing is thrown.</summary>
    [Fact]
    public void Read_TheCommittedRulesWithAnyLineGoneOrCut_NeverThrows()
    {
        string text = string.Concat(Directory.EnumerateFiles(RepositoryFile.PathOf("rules/us-cfr49"), "*.yaml").Order(StringComparer.Ordinal).Select(f => File.ReadAllText(f) + "\n---\n"));
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i += 7)
        {
            string[] gone = [.. lines.Where((_, k) => k != i)];
            string[] cut = [.. lines.Select((l, k) => k == i ? l[..(l.Length / 2)] : l)];
            foreach (string[] broken in new[] { gone, cut })
            {
                RuleSet? set = Read(string.Join('\n', broken), out DiagnosticList found);
                Assert.True(set is not null || found.HasErrors);
                Assert.All(found, d => Assert.True(d.Span.Source is not null, d.ToString()));
            }
        }
    }

    [Fact]
    public void Read_Folders_AreFoundOrRefused()
    {
        DiagnosticList found = [];
        Assert.Null(RuleReader.Read("no-such-folder", found));
        Assert.Equal("R001", Assert.Single(found).Code);
        using TemporaryFolder folder = new();
        found = [];
        Assert.Null(RuleReader.Read(folder.Path, found));
        Assert.Equal("R002", Assert.Single(found).Code);
    }

    [Fact]
    public void Read_TheCommittedRules_NothingIsWrongAndTheyFitTheirSchema()
    {
        DiagnosticList found = [];
        string folder = RepositoryFile.PathOf("rules/us-cfr49");
        Assert.NotNull(RuleReader.Read(folder, found));
        Assert.Empty(found);
        JsonSchema schema = Schema();
        foreach (JsonNode? document in Directory.EnumerateFiles(folder, "*.yaml").SelectMany(f => YamlAsJson.Documents(File.ReadAllText(f))))
        {
            EvaluationResults results = schema.Evaluate(JsonSerializer.SerializeToElement(document), new EvaluationOptions { OutputFormat = OutputFormat.List });
            Assert.True(results.IsValid, string.Join("; ", (results.Details ?? []).Where(d => d.Errors is not null).Take(5).Select(d => $"{d.InstanceLocation} {string.Join(", ", d.Errors!.Values)}")));
        }
    }

    /// <summary>The example of docs/rules.md is a set as it stands there.</summary>
    [Fact]
    public void Read_TheExampleOfTheGuide_NothingIsWrong()
    {
        string guide = File.ReadAllText(RepositoryFile.PathOf("docs/rules.md")).ReplaceLineEndings("\n");
        string example = guide[(guide.IndexOf("```yaml\n", StringComparison.Ordinal) + 8)..];
        RuleSet? set = Read(example[..example.IndexOf("```", StringComparison.Ordinal)], out DiagnosticList found);
        Assert.Empty(found);
        Assert.Equal(3, set!.Rows.Length);
    }

    [Fact]
    public void Schema_InDocs_IsGenerated() => RepositoryFile.AssertIs("docs/schemas/rules.schema.json", RuleSchema.Write());

    [Theory]
    [InlineData("rule: A")]
    [InlineData("rows: { 'a/b': { title: T, limit: L, confidence: high } }")]
    [InlineData("rows: { a: { title: T, limit: L, confidence: low } }")]
    [InlineData("rows: { a: { title: T, confidence: high } }")]
    [InlineData("rows: { a: { title: T, limit: L, confidence: high, test: { begins when: b, lasts: 1 psi, least of: c } } }")]
    [InlineData("rows: { a: { title: T, limit: L, confidence: high, test: { begins when: b, lasts: 1 s } } }")]
    [InlineData("rows: { a: { title: T, limit: L, confidence: high, test: { begins when: b, lasts: 1 s, least of: c, greatest of: c } } }")]
    [InlineData("quantities: { a: { unit: psi } }")]
    public void Schema_BadFile_IsRejected(string yaml) => Assert.False(Schema().Evaluate(JsonSerializer.SerializeToElement(YamlAsJson.Documents(yaml).Single())).IsValid);

    private static JsonSchema Schema() => JsonSchema.FromText(RuleSchema.Write(), new BuildOptions { SchemaRegistry = new SchemaRegistry() });

    private static RuleSet? Read(string text, out DiagnosticList found)
    {
        found = [];
        return RuleReader.Read([new SourceText("rules.yaml", text)], found);
    }
}
