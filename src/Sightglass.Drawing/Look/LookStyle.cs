using System.Text;
using System.Text.RegularExpressions;

namespace Sightglass.Drawing.Look;

/// <summary>The look as one style text, for a drawing or a report that must stand alone.</summary>
public static partial class LookStyle
{
    private static readonly Lazy<string> _plain = new(() => Join(fonts: false, sheet: false));
    private static readonly Lazy<string> _withFonts = new(() => Join(fonts: true, sheet: false));
    private static readonly Lazy<string> _report = new(() => Join(fonts: true, sheet: true));

    /// <summary>Tokens and drawing classes, with both typefaces inside or without.</summary>
    public static string Css(bool fonts) => fonts ? _withFonts.Value : _plain.Value;

    /// <summary>Tokens, drawing classes, the sheet and the typefaces: all that a self-contained report needs.</summary>
    public static string ReportCss => _report.Value;

    private static string Join(bool fonts, bool sheet)
    {
        StringBuilder css = new();
        css.Append(FontRule().Replace(LookFiles.Text("tokens.css"), m => fonts ? Inline(m) : ""));
        css.Append(LookFiles.Text("drawing.css"));
        if (sheet)
        {
            css.Append(ImportRule().Replace(LookFiles.Text("sheet.css"), ""));
        }

        return css.ToString();
    }

    private static string Inline(Match rule)
    {
        string data = Convert.ToBase64String(LookFiles.Bytes(rule.Groups["file"].Value));
        return rule.Value.Replace($"url({rule.Groups["file"].Value})", $"url(data:font/woff2;base64,{data})", StringComparison.Ordinal);
    }

    [GeneratedRegex(@"@font-face\{[^}]*url\((?<file>fonts/[^)]+)\)[^}]*\}\n?")]
    private static partial Regex FontRule();

    [GeneratedRegex(@"@import[^;]*;\n?")]
    private static partial Regex ImportRule();
}
