using System.Net;
using Sightglass.Drawing.Look;
using Sightglass.Paper.Document;

namespace Sightglass.Paper.Html;

/// <summary>A paper as a file that stands alone: look, typefaces and drawings inside.</summary>
public static class HtmlPage
{
    public static string Write(PaperDocument paper, PaperSheet? sheet = null)
    {
        ArgumentNullException.ThrowIfNull(paper);
        sheet ??= PaperSheet.Default(paper.Look);
        sheet = paper.Lying ? sheet.Turned : sheet;
        string size = FormattableString.Invariant($"@page{{size:{sheet.Width:0.#}mm {sheet.Height:0.#}mm;margin:{sheet.Margin:0.#}mm}}@media print{{.head{{padding-left:0;padding-right:0}}}}");
        if (sheet.Panels > 1)
        {
            size += FormattableString.Invariant($"@media print{{.paper{{columns:{sheet.Panels};column-gap:{2 * sheet.Margin:0.#}mm}}}}");
        }

        string large = sheet.Large ? " class=\"large\"" : "";
        bool framed = paper.Look != PaperLook.Pocket;
        string head = framed ? $"<header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav><span class=\"where\">{Text(paper.Machine)}</span></header>" : "";
        string foot = framed ? $"<footer class=\"foot\"><span class=\"keys\"></span><span>{Text(paper.Notice)}</span></footer>" : "";
        return $"<!DOCTYPE html><html lang=\"{Text(paper.Language)}\"{large}><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>{Text(paper.Title)}</title>"
            + $"<style>{LookStyle.ReportCss}{PaperFiles.Css}{size}</style></head><body>{head}<main>{HtmlPaper.Write(paper, alone: true)}</main>{foot}</body></html>";
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
