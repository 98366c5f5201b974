using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Look;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Paper;

/// <summary>A walk-down for a phone: one file that needs nothing else, or the page that is served. Both run the same scripts on the same sheet.</summary>
public static class WalkDownPaper
{
    /// <summary>In the order in which they build on each other.</summary>
    private static readonly string[] s_scripts = ["store.js", "findings.js", "result.js", "parts.js", "photo.js", "page.js"];

    /// <summary>Scripts of the page that is served, each a file of its own.</summary>
    public static IReadOnlyList<string> ServedScripts { get; } = [.. s_scripts, "sync.js", "served.js"];

    /// <summary>A file that stands alone. It is not allowed any address but its own parts.</summary>
    public static string Alone(WalkDownSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        string script = string.Concat(s_scripts.Append("alone.js").Select(Script));
        string hash = Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script)));
        string policy = $"default-src 'none'; script-src 'sha256-{hash}'; style-src 'unsafe-inline'; font-src data:; img-src data: blob:; media-src blob:; base-uri 'none'; form-action 'none'";
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"").Append(Tongue.Spoken.Code).Append("\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1,viewport-fit=cover\">");
        page.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"").Append(policy).Append("\"><title>").Append(Text(Say.With($"Walk-down {sheet.Book} {sheet.RoadNumber}").Trim())).Append("</title>");
        page.Append("<style>").Append(LookStyle.ReportCss).Append(PaperFiles.Text("walkdown.css")).Append("</style></head>");
        Body(page, Say.Book(sheet.Notice), "");
        page.Append("<script type=\"application/json\" id=\"sheet\">").Append(SheetOf(sheet).Replace("<", "\\u003C", StringComparison.Ordinal)).Append("</script>");
        return page.Append("<script>").Append(script).Append("</script></body></html>\n").ToString();
    }

    /// <summary>The page that is served: styles, scripts and sheet are files beside it.</summary>
    /// <param name="notice">The book's.</param>
    /// <param name="theme"><c>light</c> or <c>dark</c>; anything else leaves it to the phone.</param>
    /// <param name="tongues">Markup with which another language is chosen.</param>
    public static string Served(string notice, string? theme, string tongues)
    {
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"").Append(Tongue.Spoken.Code).Append('"').Append(theme is "light" or "dark" ? $" data-theme=\"{theme}\"" : "").Append("><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1,viewport-fit=cover\"><base href=\"/walkdown/\"><title>").Append(Text(Say.It("Walk-down"))).Append(" · Sightglass</title>");
        page.Append("<link rel=\"icon\" href=\"mark.svg\" type=\"image/svg+xml\"><link rel=\"stylesheet\" href=\"look/sheet.css\"><link rel=\"stylesheet\" href=\"walkdown.css\"></head>");
        Body(page, notice, tongues);
        foreach (string script in ServedScripts)
        {
            page.Append("<script src=\"").Append(script).Append("\"></script>");
        }

        return page.Append("</body></html>\n").ToString();
    }

    /// <summary>A sheet as the phone reads it: its names are those of the book, because findings name them; what a person reads for them in another language stands beside.</summary>
    public static string SheetOf(WalkDownSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        IEnumerable<string> shown = sheet.Stops.SelectMany(s => new[] { s.Place, s.Text }.Concat(s.Dangers.SelectMany(d => new[] { d.Text, d.Protection })).Concat(s.Items.SelectMany(i => new[] { i.Name, i.Purpose, i.Normal })))
            .Concat([sheet.Book, sheet.Purpose, .. sheet.Arrange]);
        Dictionary<string, string> said = shown.Where(t => t.Length > 0).Distinct().Select(t => (Text: t, Said: Say.Book(t))).Where(t => t.Text != t.Said).ToDictionary(t => t.Text, t => t.Said, StringComparer.Ordinal);
        return said.Count == 0 ? sheet.ToJson() : $"{sheet.ToJson()[..^1]},\"said\":{JsonSerializer.Serialize(said)}}}";
    }

    /// <summary>One of the scripts.</summary>
    /// <exception cref="ArgumentException">There is none of that name.</exception>
    public static string Script(string name) => PaperFiles.Text("walkdown/" + name);

    private static void Body(StringBuilder page, string notice, string tongues)
    {
        string walkDown = Text(Say.It("Walk-down")), decide = Say.It("Local rules, the maker's manual and qualified people decide.");
        page.Append("<body class=\"wd\"><header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav><span class=\"where\" id=\"where\">").Append(walkDown).Append("</span></header>");
        page.Append("<div class=\"kept\" id=\"kept\" role=\"status\"></div><main id=\"main\"><h1 tabindex=\"-1\">").Append(walkDown).Append("</h1><noscript><p>").Append(Text(Say.It("This page needs scripts."))).Append("</p></noscript></main>");
        page.Append("<footer class=\"foot\">").Append(notice.Contains(decide, StringComparison.Ordinal) ? "" : $"<span>{Text(decide)}</span>").Append("<span>").Append(Text(notice)).Append("</span>").Append(tongues).Append("</footer>");
        page.Append("<nav class=\"bar\" id=\"bar\" aria-label=\"").Append(Text(Say.It("Walk"))).Append("\" hidden>").Append(Button("back", Say.It("Back"))).Append(Button("places", Say.It("Places")));
        page.Append(Button("hand-in", Say.It("Hand in"))).Append(Button("onward", Say.It("Onward"), "btn key")).Append("</nav>");
        page.Append("<script type=\"application/json\" id=\"words\">").Append(WalkDownWords.Json()).Append("</script>");
    }

    private static string Button(string id, string words, string style = "btn") => $"<button class=\"{style}\" type=\"button\" id=\"{id}\">{Text(words)}</button>";

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
