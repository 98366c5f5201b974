using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;

namespace Sightglass.Book.Kinds;

/// <summary>Finds what is wrong with a kind sheet, for the tests of whoever writes one: the reader trusts sheets.</summary>
public static class KindSheetDefects
{
    private static readonly string[] s_common =
    [
        "kind", "system", "position", "places", "label", "for", "normal", "cautions", "know", "operate", "repair", "asks", "photo", "holds", "if it fails", "connects to", "ports", "positions",
        "usual", "who", "permission", "told", "takes", "hands",
    ];

    /// <summary>One sentence for each defect; empty for a good sheet.</summary>
    public static IReadOnlyList<string> Of(KindSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        List<string> defects = [];
        if (sheet.Purpose.Length == 0)
        {
            defects.Add($"`{sheet.Name}` lacks its purpose.");
        }

        Twice(sheet.Parameters.Select(p => p.Name), "parameter", sheet, defects);
        Twice(sheet.Quantities.Select(q => q.Name), "quantity", sheet, defects);
        Twice(sheet.Faults.Select(f => f.Name), "fault", sheet, defects);
        Twice(sheet.Positions, "position", sheet, defects);
        defects.AddRange(sheet.Parameters.Where(p => s_common.Contains(p.Name)).Select(p => $"`{sheet.Name}`: `{p.Name}` is a key of every item."));
        foreach (KindParameter p in sheet.Parameters.Concat(sheet.Faults.SelectMany(f => f.Parameters)))
        {
            defects.AddRange(Defects(p).Select(d => $"`{sheet.Name}`, `{p.Name}`: {d}"));
        }

        return defects;
    }

    private static void Twice(IEnumerable<string> names, string what, KindSheet sheet, List<string> defects) =>
        defects.AddRange(names.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => $"`{sheet.Name}` has the {what} `{g.Key}` twice."));

    private static IEnumerable<string> Defects(KindParameter p)
    {
        if (p.Doc.Length == 0)
        {
            yield return "it is not described.";
        }

        if (p.Required && p.Default is not null)
        {
            yield return "it is required and has a default.";
        }

        if (p.IsWhole && (p.Type != ParameterType.Quantity || p.Dimension != Dimension.One))
        {
            yield return "it is whole and is no number without a unit.";
        }

        if (p.Type == ParameterType.Table && ColumnDefect(p) is { } column)
        {
            yield return column;
        }

        if (p.Type == ParameterType.Choice && (p.Choices.IsDefaultOrEmpty || (p.Default is { } choice && !p.Choices.Contains(choice))))
        {
            yield return "its choices are missing, or its default is none of them.";
        }

        foreach (string text in new[] { p.Default, p.Minimum, p.Maximum }.OfType<string>().Where(_ => p.Type is ParameterType.Quantity or ParameterType.ByPosition))
        {
            DiagnosticList notes = [];
            if (!QuantityText.TryParse(text, Span.None, p.Dimension, notes, out _))
            {
                yield return string.Join("; ", notes);
            }
        }
    }

    private static string? ColumnDefect(KindParameter p)
    {
        try
        {
            TableColumn.Of(p);
            return null;
        }
        catch (InvalidOperationException e)
        {
            return e.Message;
        }
    }
}
