using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Book.Tests.Samples;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Tests.Hostile;

/// <summary>Texts that would break a careless reader: each is refused with a code, in bounded work, without an exception.</summary>
public class HostileTextTests
{
    private const int Many = 100_000;

    /// <summary>Name, text and the code it must give (empty where the text is harmless).</summary>
    public static TheoryData<string, string, string> Texts => new()
    {
        { "brackets", "book: A\nplaces: " + new string('[', Many), "B014" },
        { "brackets in several lines", "book: A\nplaces: " + Repeat("[\n ", Many), "B011" },
        { "braces", "book: A\nplaces: " + Repeat("{a: ", Many), "B014" },
        { "dashes", "book: A\nlegs:\n  " + Repeat("- ", Many), "B014" },
        { "question marks", "book: A\nplaces:\n  " + Repeat("? ", Many), "B014" },
        { "stairs of maps", "book: A\n" + string.Concat(Enumerable.Range(0, 300).Select(i => new string(' ', i) + "a:\n")), "B014" },
        { "alias bomb", AliasBomb(), "B016" },
        { "cycle", "book: A\nplaces: &a { yard: *a }\n", "B016" },
        { "merge key", "book: A\nplaces:\n  <<: { yard: { x: 1 m, y: 2 m } }\n", "B038" },
        { "type mark", "book: !!python/object:os.system [ls]\n", "B017" },
        { "many nodes", "book: A\nplaces:\n  a: [" + Repeat("1,", 500_000) + "1]\n", "B015" },
        { "many documents", "book: A\n" + Repeat("--- 1\n", Many), "B020" },
        { "many errors", "book: A\nitems:\n" + string.Concat(Enumerable.Range(0, 5_000).Select(i => $"  i{i}: {{ kind: nonsense, k{i}: 1 }}\n")), "B020" },
        { "many broken lines", "book: A\n" + Repeat("}{ ][ : : \"\n", 10_000), "B011" },
        { "nul", "book: A\0B\n", "B013" },
        { "many controls", "book: " + new string('\u0001', Many), "B013" },
        { "lone surrogate", "book: A\uD800B\n", "B013" },
        { "tabs", "book: A\nplaces:\n\tyard: { x: 1 m, y: 2 m }\n", "B012" },
        { "one long key", "book: A\n" + new string('k', Many) + ": 1\n", "B010" },
        { "one long name", "book: A\nitems:\n  " + new string('k', 1_000) + ": {}\n", "B038" },
        { "one long value", "book: A\nlength: " + new string('1', Many) + " m\n", "Q005" },
        { "huge number", "book: A\nlength: 1e999 m\n", "Q005" },
        { "not a number", "book: A\nlength: NaN m\n", "Q001" },
        { "directive", "%YAML 9.9\n---\nbook: A\n", "B010" },
        { "quote to the end", "book: \"A\n" + Repeat("x: 1\n", 1_000), "B011" },
        { "block to the end", "notice: |\n" + Repeat("  x\n", Many) + "book: A\n", "" },
        { "windows lines", "book: A\r\nlength: 20 m\r\nplaces:\r\n  yard: { x: 1 m, y: 2 m }\r\n", "" },
        { "null list", "book: A\nlegs: ~\nplaces:\n", "" },
        { "deep path", "book: A\nitems:\n  a: { photo: " + Repeat("../", 100) + "x }\n", "B057" },
        { "many road numbers", ManyRoadNumbers(), "B021" },
        { "assembly bomb", AssemblyBomb(), "B015" },
        { "assembly of long texts", "book: A\nassemblies:\n  a:\n    parameters: { t: {} }\n    items:\n      '{name} x': { for: '" + Repeat("{t}", 20_000) + "' }\nitems:\n  b: { assembly: a, t: '" + new string('y', 20_000) + "' }\n", "B015" },
        { "assembly in a circle", "book: A\nassemblies:\n  a: { items: { '{name} x': { assembly: b } } }\n  b: { items: { '{name} y': { assembly: a } } }\nitems:\n  c: { assembly: a }\n", "B093" },
        { "port in a circle", "book: A\nassemblies:\n  a: { items: { '{name} x': {} }, ports: { p: '{name}, p' } }\nitems:\n  c: { assembly: a }\n  o: { kind: orifice, from: 'c, p', to: outside }\n", "B074" },
        { "many commas", "book: A\nitems:\n  a: { kind: orifice, from: '" + Repeat("a,", Many) + "', to: outside }\n", "B060" },
        { "many ofs", "book: A\nsituations:\n  s: { start: { '" + Repeat("a of ", Many) + "': 1 } }\n", "B070" },
        { "empty", "", "B031" },
        { "only a number", "42", "B032" },
        { "comment only", "# nothing\n", "B031" },
    };

    /// <summary>Seven levels of twenty parts each: more than a thousand million items.</summary>
    private static string AssemblyBomb() => "book: A\nassemblies:\n"
        + string.Concat(Enumerable.Range(0, 7).Select(i => $"  a{i}:\n    items:\n"
            + string.Concat(Enumerable.Range(0, 20).Select(k => $"      '{{name}} {k}': {(i == 6 ? "{}" : $"{{ assembly: a{i + 1} }}")}\n"))))
        + "items:\n  b: { assembly: a0 }\n";

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void Read_HostileText_GivesItsCode(string name, string text, string code)
    {
        (ClassBook? book, DiagnosticList found) = SampleBook.Read(text);
        if (code.Length == 0)
        {
            Assert.True(book is not null, $"{name}: {string.Join('\n', found)}");
            return;
        }

        Assert.Null(book);
        Assert.True(found.Any(d => d.Code == code), $"{name}: {string.Join('\n', found.Take(5))}");
        Assert.True(found.Count <= 1_002, $"{name}: {found.Count} findings");
        Assert.All(found, d => Assert.True(d.ToString().Length < 1_000, name));
    }

    [Fact]
    public void Read_ManyNodes_AllocatesLittle()
    {
        string text = "book: A\nplaces:\n  a: [" + Repeat("1,", 3_000_000) + "1]\n";
        long before = GC.GetAllocatedBytesForCurrentThread();
        SampleBook.Read(text);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 300L << 20);
    }

    /// <summary>Files are read beside each other; which part of a book is too much follows from their order all the same.</summary>
    [Fact]
    public void Read_FilesThatHoldTooMuchTogether_SameFindingsAsOneByOne()
    {
        YamlLimits limits = YamlLimits.Default with { Nodes = 1_000 };
        SourceText[] files = [.. Enumerable.Range(0, 4).Select(i => new SourceText($"{i}.yaml", $"{(i == 0 ? "book: A\n" : "")}pieces {i}: [{Repeat("1, ", 300)}1]\n"))];
        DiagnosticList found = [];
        Assert.Null(BookReader.Read(files, [], new([]), found, limits: limits));
        Diagnostic tooMany = Assert.Single(found, d => d.Code == "B015");
        Assert.Equal("3.yaml", tooMany.Span.Path);
    }

    private static string AliasBomb()
    {
        StringBuilder text = new("book: A\na0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 30; i++)
        {
            text.Append($"a{i}: &a{i} [{string.Join(", ", Enumerable.Repeat($"*a{i - 1}", 9))}]\n");
        }

        return text.ToString();
    }

    private static string ManyRoadNumbers()
    {
        StringBuilder text = new("book: A\nitems:\n");
        text.AppendJoin("", Enumerable.Range(0, 1_000).Select(i => $"  i{i}: {{}}\n")).Append("road numbers:\n");
        return text.AppendJoin("", Enumerable.Range(0, 500).Select(i => $"  '{i}': {{ modifications: [ {{ name: M, changes: {{ i1: {{ label: X }} }} }} ] }}\n")).ToString();
    }

    private static string Repeat(string piece, int count) => new StringBuilder().Insert(0, piece, count).ToString();
}
