using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Kinds;

namespace Sightglass.Book.Tests.Docs;

/// <summary>Writes docs/kinds.md from the kind sheets: one template for every kind.</summary>
internal static class KindPage
{
    private const string Head = """
        # Kinds of equipment

        Made from the kind sheets by the tests of the book; changes are made there. What all items share (`system`, `position`, `places`, texts, who operates) stands in
        [book.md](book.md), what an indication shows and how it is read as well. *Usual* is what holds where nothing is written; what is *needed* must be written; the rest may be left out.

        """;

    public static string Write(KindCatalog kinds)
    {
        StringBuilder page = new(Head);
        page.Append("\n| kind | | what it is |\n| --- | --- | --- |\n");
        foreach (KindSheet k in kinds.Sheets)
        {
            page.Append($"| [{k.Name}](#{k.Name.Replace(' ', '-')}) | {Part(k)} | {k.Purpose} |\n");
        }

        foreach (KindSheet k in kinds.Sheets)
        {
            One(k, page);
        }

        return page.ToString();
    }

    private static string Part(KindSheet kind) => kind.Role switch
    {
        KindRole.Store => "store",
        KindRole.Path => "path",
        KindRole.Wire => "wire",
        KindRole.Indication => "indication",
        KindRole.Control => "control",
        KindRole.Signal => "signal",
        _ => "described",
    };

    private static void One(KindSheet kind, StringBuilder page)
    {
        page.Append($"\n## {kind.Name}\n\n{kind.Purpose}");
        if (kind.Details.Length > 0)
        {
            page.Append(' ').Append(kind.Details.ReplaceLineEndings(" ").Trim());
        }

        page.Append("\n\n");
        Line("Positions", kind.Positions.Select((p, i) => p == (kind.UsualPosition ?? kind.Positions[0]) ? $"`{p}` (usual)" : $"`{p}`"), page);
        Line("Ends", new[] { "from", "to" }.Where(kind.HasEnd).Select(e => kind.NeedsEnd(e) ? $"`{e}`" : $"`{e}` (may be left out)"), page);
        Line("Ports", kind.Role == KindRole.Store ? kind.Ports.Select(p => $"`{p.Name}`: {p.Doc}").Append("the author's own") : [], page);
        Parameters(kind.Parameters, page);
        if (kind.Quantities.Length > 0)
        {
            page.Append("| true quantity | measures | |\n| --- | --- | --- |\n");
            foreach (KindQuantity q in kind.Quantities)
            {
                page.Append($"| `{q.Name} of …` | {(q.IsCondition ? "yes or no" : Name(q.Dimension))} | {q.Doc} |\n");
            }

            page.Append('\n');
        }

        foreach (KindFault f in kind.Faults)
        {
            string values = string.Join(" ", f.Parameters.Select(p => $"`{p.Name}`: {Sentence(p)}"));
            page.Append($"- Fault `{f.Name}`: {f.Doc}{(values.Length > 0 ? $" {values}" : "")}\n");
        }

        while (page[^1] == '\n')
        {
            page.Length--;
        }

        page.Append('\n');
    }

    private static void Line(string what, IEnumerable<string> words, StringBuilder page)
    {
        string[] all = [.. words];
        if (all.Length > 0)
        {
            page.Append($"{what}: {string.Join(", ", all)}.\n\n");
        }
    }

    private static void Parameters(ImmutableArray<KindParameter> parameters, StringBuilder page)
    {
        if (parameters.Length == 0)
        {
            return;
        }

        page.Append("| parameter | what is written | usual | what it says |\n| --- | --- | --- | --- |\n");
        foreach (KindParameter p in parameters)
        {
            page.Append($"| `{p.Name}` | {What(p)} | {p.Default ?? (p.Required ? "*needed*" : "")} | {p.Doc} |\n");
        }

        page.Append('\n');
    }

    private static string What(KindParameter p) => p.Type switch
    {
        ParameterType.Quantity => (p.IsWhole ? "whole number" : Name(p.Dimension)) + Limits(p),
        ParameterType.Choice => string.Join(", ", p.Choices.Select(c => $"`{c}`")),
        ParameterType.YesNo => "`yes` or `no`",
        ParameterType.Item => "an item",
        ParameterType.Items => "items",
        ParameterType.Pins => "wires by the numbers of pins",
        ParameterType.Formula => "a formula",
        ParameterType.Table => $"rows of {string.Join(", ", TableColumn.Of(p).Select(c => $"`{c.Name}`"))}",
        ParameterType.ByPosition => $"{Name(p.Dimension)} by position{Limits(p)}",
        _ => "a text",
    };

    private static string Limits(KindParameter p) => (p.Minimum, p.Maximum) switch
    {
        ({ } low, { } high) => $", {low} to {high}",
        ({ } low, null) => $", at least {low}",
        (null, { } high) => $", at most {high}",
        _ => "",
    };

    private static string Sentence(KindParameter p) => $"{p.Doc.TrimEnd('.')} ({What(p)}{(p.Default is { } usual ? $"; usual {usual}" : p.Required ? "; needed" : "")}).";

    private static string Name(Dimension dimension) => dimension == Dimension.One ? "number" : dimension.ToString();
}
