using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Recordings;

/// <summary>Which rows of a recording are states to draw from: those of a stretch in which nothing is missing that is set.</summary>
public static class RecordedRows
{
    /// <summary>Rows of which one is drawn.</summary>
    public const int Most = 10_000;

    /// <summary>Times that are written in decimals come as near to each other as this, s.</summary>
    private const double Hair = 1e-6;

    /// <summary>Every row that is whole, thinned where there are more than are drawn from. The file was read.</summary>
    public static StatesDraw All(Recording recording)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ImmutableArray<int> rows = Whole(recording, recording.Table!, double.NegativeInfinity, double.PositiveInfinity, 0, out _);
        return new(recording.Name, recording.Span) { Of = recording, Rows = rows.Length <= Most ? rows : [.. rows.Where((_, i) => i % ((rows.Length / Most) + 1) == 0)] };
    }

    /// <summary>The states of a stretch; null with the reasons in <paramref name="found"/>.</summary>
    /// <param name="recording">Whose file was read.</param>
    /// <param name="from">The first moment as the recording writes it, or null.</param>
    /// <param name="to">The last moment, or null.</param>
    /// <param name="every">At least so long between two rows, or null.</param>
    /// <param name="found">Takes what is wrong.</param>
    public static StatesDraw? Check(Recording recording, string? from, string? to, string? every, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(recording);
        ArgumentNullException.ThrowIfNull(found);
        RecordedTable table = recording.Table!;
        double? Read(string key, string? text) => text is null ? null : Moment(key, text, SpanOf(text), table, found);
        (double? first, double? last) = (Read("from", from), Read("to", to));
        double? step = every is null ? 0 : QuantityText.TryParse(every, SpanOf(every), Dimension.Second, found, out Quantity q) ? q.Si : null;
        return !found.HasErrors && Of(recording, table, recording.Span, first, last, step ?? 0, found) is { IsEmpty: false } rows && !found.HasErrors
            ? new(recording.Name, recording.Span) { Of = recording, From = from, To = to, Every = step ?? 0, Rows = rows }
            : null;
    }

    /// <summary>A moment in the seconds of a table; null after saying that it is none.</summary>
    internal static double? Moment(string key, string text, Span span, RecordedTable table, DiagnosticList found)
    {
        DiagnosticList notes = [];
        double? read = table.IsClock ? RecordingTime.Clock(text.Trim())
            : QuantityText.TryParse(text.Trim(), span, Dimension.Second, notes, out Quantity q) ? q.Si : null;
        if (read is null)
        {
            found.Add(BookMessages.NotAMoment(span, key, text, table.IsClock));
        }

        return read + (table.IsClock && read < table.Times[0] - (RecordingTime.Day / 2) ? RecordingTime.Day : 0);
    }

    /// <summary>The rows between two moments; says why there are none, or too many.</summary>
    internal static ImmutableArray<int> Of(Recording recording, RecordedTable table, Span span, double? from, double? to, double every, DiagnosticList found)
    {
        ImmutableArray<int> rows = Whole(recording, table, from ?? double.NegativeInfinity, to ?? double.PositiveInfinity, every, out bool any);
        if (rows.IsEmpty)
        {
            found.Add(BookMessages.NoRows(span, recording.Name, any ? "each row of the stretch lacks a value that is set" : $"it goes from {table.Labels[0]} to {table.Labels[^1]}"));
        }
        else if (rows.Length > Most)
        {
            found.Add(BookMessages.TooManyStates(span, recording.Name, rows.Length, Most));
        }

        return rows;
    }

    private static ImmutableArray<int> Whole(Recording recording, RecordedTable table, double from, double to, double every, out bool any)
    {
        RecordedValues[] set = [.. table.Columns.Where((_, i) => recording.Columns[i].Sets.Length > 0)];
        var rows = ImmutableArray.CreateBuilder<int>();
        (any, double next) = (false, from);
        for (int row = table.RowAt(from); row < table.Rows && table.Times[row] <= to; row++)
        {
            any = true;
            if (table.Times[row] >= next && Array.TrueForAll(set, c => c.Has(row)))
            {
                rows.Add(row);
                next = every > 0 ? table.Times[row] + every - Hair : next;
            }
        }

        return rows.ToImmutable();
    }

    private static Span SpanOf(string text) => new SourceText("", text).Between(0, text.Length);
}
