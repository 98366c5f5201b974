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
    private readonly HashSet<(string Code, string Path, int Start, string Message)> _seenOnVariants = [];
    private readonly HashSet<(SourceText Source, int Line)> _damaged = [];
    private readonly HashSet<SourceText> _damagedFiles = [];
    private int _compared;
    private bool _cut;

    public YamlLimits Limits => limits;

    public bool HasErrors { get; private set; }

    /// <summary>Some text could not be read, so that names may seem to be missing which are only unreadable.</summary>
    public bool AnyDamage => _damaged.Count > 0;

    public void Add(Diagnostic d)
    {
        HasErrors |= d.Severity == Severity.Error;
        if (_cut || !_seen.Add(KeyOf(d)))
        {
            return;
        }

        _cut = _seen.Count > limits.Findings;
        found.Add(_cut ? BookMessages.MoreFindings(d.Span, limits.Findings) : d);
    }

    /// <summary>What is wrong in an assembly is told for its first use only, whatever the names at the others.</summary>
    private static (string Code, string Path, int Start, string Message) KeyOf(Diagnostic d) =>
        (d.Code, d.Span.Path, d.Span.Start, d.Span.Source?.SeenFrom.Source is null ? d.Message : "");

    /// <summary>Names to look for a similar one in; none once too many have been compared.</summary>
    public IReadOnlyCollection<string> Similar(IEnumerable<string> names)
    {
        if (_compared >= limits.NamesCompared || _cut)
        {
            return [];
        }

        string[] all = [.. names.Take(limits.NamesCompared - _compared)];
        _compared += all.Length;
        return all;
    }

    /// <summary>Adds a finding that shows only on a variant of the class, such as a road number, unless the class has it too.</summary>
    public void AddOn(string variant, Diagnostic d)
    {
        (string Code, string Path, int Start, string Message) key = KeyOf(d);
        if (!_seen.Contains(key) && _seenOnVariants.Add(key))
        {
            Add(d with { Message = $"{d.Message} ({variant})" });
        }
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
        _damaged.Add((source.Origin, line));
        _damagedFiles.Add(source.Origin);
    }

    /// <summary>Takes over what was found in a part that was read by itself, and which of its lines were set aside.</summary>
    /// <param name="part">Of that part.</param>
    /// <param name="notes">What it holds, as it was found.</param>
    public void Join(Findings part, DiagnosticList notes)
    {
        AddRange(notes.AsFound);
        _damaged.UnionWith(part._damaged);
        _damagedFiles.UnionWith(part._damagedFiles);
    }

    /// <summary>A collection of its own that knows the same unreadable lines.</summary>
    public Findings Apart(DiagnosticList notes)
    {
        Findings apart = new(notes, limits) { _compared = _compared };
        apart._damaged.UnionWith(_damaged);
        apart._damagedFiles.UnionWith(_damagedFiles);
        return apart;
    }

    /// <summary>Whether the line on which something begins was set aside or mended.</summary>
    public bool IsDamaged(Span span) => span.Source is { } source && _damaged.Contains((source.Origin, span.Line));

    /// <summary>Whether a part of a file was set aside.</summary>
    public bool IsDamaged(SourceText? source) => source is not null && _damagedFiles.Contains(source.Origin);

    /// <summary>Whether a line within a span, or just before or after it, was set aside.</summary>
    public bool IsDamagedAround(Span span)
    {
        if (_damaged.Count == 0 || span.Source is not { } source)
        {
            return false;
        }

        (int first, int last) = (span.Line - 1, source.Locate(span.End).Line + 1);
        return _damaged.Any(d => d.Source == source.Origin && d.Line >= first && d.Line <= last);
    }
}
