using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Book.Messages;
using Sightglass.Book.Model;

namespace Sightglass.Book.Recordings;

/// <summary>The times of a recording, row by row: of a clock or counted, as the first row has it, and never going back.</summary>
internal sealed class RecordingTimes(Recording recording, RecordingFile file)
{
    private readonly List<double> _seconds = [];
    private readonly List<string> _labels = [];
    private double _midnight;

    public int Count => _seconds.Count;

    public bool IsClock { get; private set; }

    public void Add(CsvField field, string text)
    {
        double? clock = Count == 0 || IsClock ? RecordingTime.Clock(text) : null;
        IsClock = Count == 0 ? clock is not null : IsClock;
        double? read = IsClock ? clock : RecordingCells.Number(text, recording.HasDecimalComma) is { } number ? recording.TimeUnit.ToSi(number) : null;
        if (read is not { } at)
        {
            file.Tell(BookMessages.NotATime(file.SpanOf(field), recording.Time, text));
            at = Count > 0 ? _seconds[^1] - _midnight : 0;
        }

        double before = Count > 0 ? _seconds[^1] : double.NegativeInfinity;
        if (IsClock && _midnight + at < before - (RecordingTime.Day / 2))
        {
            _midnight += RecordingTime.Day;
        }

        if (_midnight + at < before)
        {
            file.Tell(BookMessages.TimeGoesBack(file.SpanOf(field), text, _labels[^1]));
        }

        _seconds.Add(Math.Max(_midnight + at, before));
        _labels.Add(IsClock ? text : string.Create(CultureInfo.InvariantCulture, $"{recording.TimeUnit.FromSi(at):0.######} {recording.TimeUnit.Symbol}"));
    }

    public ImmutableArray<double> Seconds() => [.. _seconds];

    /// <summary>The times as they are written, without a date that is the same for all.</summary>
    public ImmutableArray<string> Labels()
    {
        int[] dates = [.. _labels.Select(RecordingTime.DateLength).Distinct()];
        return IsClock && dates is [> 0 and var length] && _labels.TrueForAll(l => l.AsSpan(0, length).SequenceEqual(_labels[0].AsSpan(0, length)))
            ? [.. _labels.Select(l => l[length..])]
            : [.. _labels];
    }
}
