using System.Collections;

namespace Sightglass.Basics.Diagnostics;

/// <summary>Collects every finding about an input; printed in the order of their places.</summary>
public sealed class DiagnosticList : IReadOnlyCollection<Diagnostic>
{
    private readonly List<Diagnostic> _found = [];

    public int Count => _found.Count;

    public bool HasErrors => _found.Exists(d => d.Severity == Severity.Error);

    public void Add(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        _found.Add(diagnostic);
    }

    public void Error(string code, Span span, string message, string? fix = null) => Add(new(code, Severity.Error, span, message, fix));

    public void Warn(string code, Span span, string message, string? fix = null) => Add(new(code, Severity.Warning, span, message, fix));

    public void AddRange(IEnumerable<Diagnostic> diagnostics)
    {
        ArgumentNullException.ThrowIfNull(diagnostics);
        foreach (Diagnostic d in diagnostics)
        {
            Add(d);
        }
    }

    /// <summary>In the order in which they were found.</summary>
    public IReadOnlyList<Diagnostic> AsFound => _found;

    public IEnumerator<Diagnostic> GetEnumerator() =>
        _found.OrderBy(d => d.Span.Path, StringComparer.Ordinal).ThenBy(d => d.Span.Start).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
