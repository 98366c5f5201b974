using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Recordings;

/// <summary>The fields of one column, row by row.</summary>
internal sealed class RecordingCells(RecordedColumn column, Recording recording, RecordingFile file)
{
    private readonly List<double> _numbers = [];
    private readonly List<int> _starts = [];
    private readonly List<string> _words = [];

    /// <summary>A number with a decimal point, or with a comma where the file writes them so; null for anything else.</summary>
    public static double? Number(string text, bool comma)
    {
        if (text.Length is 0 or > 64 || text.Contains(comma ? '.' : ',', StringComparison.Ordinal))
        {
            return null;
        }

        return double.TryParse(comma ? text.Replace(',', '.') : text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : null;
    }

    public void Add(CsvField field, string text)
    {
        _starts.Add(field.Start);
        _numbers.Add(text.Length == 0 || recording.Missing.Contains(text) ? double.NaN : column.HasWords ? Word(field, text) : Value(field, text));
    }

    public RecordedValues Values(SourceText source) => new(source, [.. _numbers], [.. _words], [.. _starts]);

    private double Value(CsvField field, string text)
    {
        double value = Number(text, recording.HasDecimalComma) is { } number ? column.Unit!.ToSi(number) : double.NaN;
        if (!double.IsFinite(value))
        {
            bool other = Number(text, !recording.HasDecimalComma) is not null;
            file.Tell(BookMessages.NotANumber(file.SpanOf(field), column.Head, text, !other ? null : recording.HasDecimalComma ? "leave `decimal: comma` away: the file writes points" : "say `decimal: comma`, where the file writes 12,5 for twelve and a half"));
        }

        return value;
    }

    private double Word(CsvField field, string text)
    {
        string? word = column.As.GetValueOrDefault(text) ?? ByNumber(text) ?? (column.Positions.IsEmpty || column.Positions.Contains(text) ? text : null);
        if (word is null || (column.Positions.IsEmpty && !column.As.ContainsValue(word)))
        {
            file.Tell(BookMessages.NotAPosition(file.SpanOf(field), column.Head, text, column.Positions.IsEmpty ? [.. column.As.Keys] : column.Positions));
            return double.NaN;
        }

        int at = _words.IndexOf(word);
        if (at < 0)
        {
            _words.Add(word);
            at = _words.Count - 1;
        }

        return at;
    }

    // `3.0` where the book says what `3` is.
    private string? ByNumber(string text) => Number(text, recording.HasDecimalComma) is { } number
        ? column.As.FirstOrDefault(a => Number(a.Key, comma: false) == number).Value
        : null;
}
