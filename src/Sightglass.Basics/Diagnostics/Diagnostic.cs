namespace Sightglass.Basics.Diagnostics;

/// <summary>How bad a finding is: an error refuses the input, a warning does not.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}

/// <summary>
/// One finding about an input text. Printed as
/// <c>file:line:column: code: what is wrong; what would be right</c>.
/// </summary>
/// <param name="Code">Stable code, such as <c>B012</c>; each has an entry in docs/diagnostics.md.</param>
/// <param name="Severity">Error, warning or note.</param>
/// <param name="Span">Where it stands.</param>
/// <param name="Message">What was found.</param>
/// <param name="Fix">What would be right, or null where nothing can be said.</param>
public sealed record Diagnostic(string Code, Severity Severity, Span Span, string Message, string? Fix = null)
{
    /// <summary>What was found and, for a text that is used in several places, for which use.</summary>
    public string Told => Span.Use is { Length: > 0 } use ? $"{Message} ({use})" : Message;

    public override string ToString()
    {
        string place = Span.ToString();
        string body = Fix is null ? Told : $"{Told}; {Fix}";
        string code = Severity == Severity.Error ? Code : $"{Code} ({(Severity == Severity.Warning ? "warning" : "note")})";
        return place.Length == 0 ? $"{code}: {body}" : $"{place}: {code}: {body}";
    }
}
