using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Recordings;

/// <summary>Reads the file of a recording into the columns that the book names; reports every field that is not understood, up to a limit.</summary>
internal sealed class RecordingFile
{
    /// <summary>Rows of one recording.</summary>
    public const int MostRows = 200_000;

    private const int MostFindings = 20;

    private readonly SourceText _source;
    private readonly Recording _recording;
    private readonly Findings _found;
    private readonly CsvScanner _scanner;
    private readonly char _separator;
    private int _told;

    private RecordingFile(SourceText source, Recording recording, Findings found)
    {
        (_source, _recording, _found) = (source, recording, found);
        _separator = recording.Separator ?? RecordingHead.SeparatorOf(source, recording.HeadLine);
        _scanner = new(source.Text, _separator);
    }

    /// <summary>The table, and the recording with the units that its heads say; null where something was not understood.</summary>
    public static Recording? Read(SourceText source, Recording recording, Findings found) => new RecordingFile(source, recording, found).Read();

    private Recording? Read()
    {
        if (!NextRow(_recording.HeadLine))
        {
            _found.Add(Flaw() ?? BookMessages.EmptyRecording(_source.Between(0, 0), "line of heads"));
            return null;
        }

        string[] heads = [.. _scanner.Fields.Select(_scanner.Text)];
        int time = IndexOf(heads, _recording.Time, _recording.TimeSpan);
        int[] places = [.. _recording.Columns.Select(c => IndexOf(heads, c.Head, c.Span))];
        ImmutableArray<RecordedColumn?> columns = [.. _recording.Columns.Select(c => RecordingHead.WithUnit(c, _found))];
        if (time < 0 || places.Contains(-1) || columns.Contains(null))
        {
            return null;
        }

        Recording whole = _recording with { Columns = columns! };
        RecordingTimes times = new(whole, this);
        RecordingCells[] cells = [.. whole.Columns.Select(c => new RecordingCells(c, whole, this))];
        for (int? line = _recording.FirstLine; _told <= MostFindings && NextRow(line); line = null)
        {
            Row(heads.Length, time, places, times, cells);
            if (times.Count > MostRows)
            {
                _found.Add(BookMessages.TooManyRows(_source.Between(_scanner.Fields[0].Start, _scanner.Fields[0].Start), MostRows));
                return null;
            }
        }

        if (Flaw() is { } flaw)
        {
            Tell(flaw);
        }
        else if (times.Count == 0 && _told == 0)
        {
            Tell(BookMessages.EmptyRecording(_source.Between(_source.Text.Length, _source.Text.Length), "rows"));
        }

        return _told > 0 ? null : whole with { Table = new(_source, times.Seconds(), times.Labels(), times.IsClock, [.. cells.Select(c => c.Values(_source))]) };
    }

    /// <summary>Reports what is wrong with a field; after so many that one more would tell nothing, only that there are more.</summary>
    public void Tell(Diagnostic finding)
    {
        if (++_told <= MostFindings)
        {
            _found.Add(finding);
        }
        else if (_told == MostFindings + 1)
        {
            _found.Add(BookMessages.MoreFields(finding.Span, MostFindings));
        }
    }

    /// <summary>Where a field stands.</summary>
    public Span SpanOf(CsvField field) => _source.Between(field.Start, field.End);

    private void Row(int heads, int time, int[] places, RecordingTimes times, RecordingCells[] cells)
    {
        IReadOnlyList<CsvField> fields = _scanner.Fields;
        if (fields.Count > heads && fields.Skip(heads).Any(f => _scanner.Text(f).Length > 0))
        {
            Tell(BookMessages.TooManyFields(SpanOf(fields[heads]), fields.Count, heads, _separator == ','));
            return;
        }

        CsvField end = new(fields[^1].End, fields[^1].End, IsQuoted: false);
        CsvField At(int place) => place < fields.Count ? fields[place] : end;
        times.Add(At(time), _scanner.Text(At(time)));
        for (int i = 0; i < cells.Length; i++)
        {
            cells[i].Add(At(places[i]), _scanner.Text(At(places[i])));
        }
    }

    /// <summary>Moves to the next row that is not blank, at or after a line.</summary>
    private bool NextRow(int? line)
    {
        while (_scanner.Next())
        {
            if (!_scanner.IsBlank && (line is null || _source.Locate(_scanner.Fields[0].Start).Line >= line))
            {
                return true;
            }
        }

        return false;
    }

    private Diagnostic? Flaw() => _scanner.Flaw == CsvFlaw.None ? null : BookMessages.Flawed(_source.Between(_scanner.FlawAt, _scanner.FlawAt), _scanner.Flaw);

    private int IndexOf(string[] heads, string head, Span span)
    {
        int at = Array.IndexOf(heads, head);
        if (at < 0)
        {
            _found.Add(BookMessages.NoColumn(span, head, [.. heads.Where(h => h.Length > 0)], _source.Path));
        }
        else if (Array.LastIndexOf(heads, head) != at)
        {
            _found.Add(BookMessages.ColumnTwice(SpanOf(_scanner.Fields[Array.LastIndexOf(heads, head)]), head));
            return -1;
        }

        return at;
    }
}
