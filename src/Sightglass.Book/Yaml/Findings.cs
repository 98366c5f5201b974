using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;

namespace Sightglass.Book.Yaml;

/// <summary>
/// Collects findings while a book is read: each once (the same place is read once per road number), at most as many as the
/// limits allow, and remembers which lines were set aside as unreadable so that their neighbours are not blamed.
/// </summary>
internal sealed class Findings(DiagnosticList found, YamlLimits limits)
{
    private readonly HashSet<(string Code, string Path, int Start, string Message)> _seen = [];
    private readonly HashSet<(SourceText Source, int Line)> _damaged = [];
    private readonly HashSet<SourceText> _damagedFiles = [];
    private bool _cut;

    public bool HasErrors { get; private set; }

    /// <summary>Some text could not be read, so that names may seem to be missing which are only unreadable.</summary>
    public bool AnyDamage => _damaged.Count > 0;

    public void Add(Diagnostic d)
    {
        HasErrors |= d.Severity == Severity.Error;
        if (_cut || !_seen.Add((d.Code, d.Span.Path, d.Span.Start, d.Message)))
        {
            return;
        }

        _cut = _seen.Count > limits.Findings;
        found.Add(_cut ? BookMessages.MoreFindings(d.Span, limits.Findings) : d);
    }

    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        foreach (Diagnostic d in diagnostics)
        {
            Add(d);
        }
    }

    public void Damaged(SourceText source, int line)
    {
        _damaged.Add((source, line));
        _damagedFiles.Add(source);
    }

    /// <summary>Whether the line on which something begins was set aside or mended.</summary>
    public bool IsDamaged(Span span) => span.Source is { } source && _damaged.Contains((source, span.Line));

    /// <summary>Whether a part of a file was set aside.</summary>
    public bool IsDamaged(SourceText? source) => source is not null && _damagedFiles.Contains(source);

    /// <summary>Whether a line within a span, or just before or after it, was set aside.</summary>
    public bool IsDamagedAround(Span span)
    {
        if (_damaged.Count == 0 || span.Source is not { } source)
        {
            return false;
        }

        (int first, int last) = (span.Line - 1, source.Locate(span.End).Line + 1);
        return _damaged.Any(d => d.Source == source && d.Line >= first && d.Line <= last);
    }
}
