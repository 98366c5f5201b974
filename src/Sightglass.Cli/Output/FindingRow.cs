using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cli.Output;

/// <summary>A finding in JSON. Line and column count from 1 and are absent where it has no place.</summary>
internal sealed record FindingRow(string Severity, string Code, string? File, int? Line, int? Column, int? EndLine, int? EndColumn, string Message, string? Fix)
{
    public static FindingRow Of(Diagnostic d)
    {
        string severity = d.Severity.ToString().ToLowerInvariant();
        if (d.Span.Source is not { } source)
        {
            return new(severity, d.Code, null, null, null, null, null, d.Told, d.Fix);
        }

        (int endLine, int endColumn) = source.Locate(d.Span.End);
        return new(severity, d.Code, d.Span.Path, d.Span.Line, d.Span.Column, endLine, endColumn, d.Told, d.Fix);
    }
}
