using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>What the line of heads says by itself: what separates fields, and in which unit a column is.</summary>
internal static class RecordingHead
{
    private static readonly char[] s_separators = [';', '\t', ','];

    /// <summary>The separator that stands most often outside of quotes in a line, the first that has one where none is said.</summary>
    public static char SeparatorOf(SourceText source, int? line)
    {
        for (int i = line ?? 1; i <= source.LineCount; i++)
        {
            string text = source.LineText(i);
            if (text.AsSpan().IndexOfAny(s_separators) >= 0)
            {
                return s_separators.MaxBy(s => Outside(text, s));
            }

            if (line is not null)
            {
                break;
            }
        }

        return ',';
    }

    /// <summary>The unit that a head ends in, between brackets: <c>BP [psi]</c>, <c>Level (mm)</c>; null where there is none that is known.</summary>
    public static Unit? UnitIn(string head)
    {
        int open = head.LastIndexOfAny(['[', '(']);
        return open >= 0 && head.Length > open + 2 && head[^1] == (head[open] == '[' ? ']' : ')') ? UnitTable.Find(head[(open + 1)..^1].Trim()) : null;
    }

    /// <summary>The column with the unit that the book or the head says; null after an error.</summary>
    public static RecordedColumn? WithUnit(RecordedColumn column, Findings found)
    {
        Unit? inHead = UnitIn(column.Head);
        if (!column.As.IsEmpty || !column.Positions.IsEmpty)
        {
            return column;
        }

        if (column.Unit is { } said && inHead is not null && inHead != said)
        {
            found.Add(BookMessages.OtherUnit(column.Span, column.Head, inHead.Symbol, said.Symbol));
            return null;
        }

        if ((column.Unit ?? inHead) is not { } unit)
        {
            found.Add(BookMessages.NoUnitOfColumn(column.Span, column.Head, "psi"));
            return null;
        }

        return column with { Unit = unit };
    }

    private static int Outside(string line, char separator)
    {
        (int count, bool quoted) = (0, false);
        foreach (char c in line)
        {
            quoted ^= c == '"';
            count += c == separator && !quoted ? 1 : 0;
        }

        return count;
    }
}
