using System.Net;

namespace Sightglass.Cli.Reports;

/// <summary>Text made safe for a page.</summary>
internal static class Html
{
    public static string Text(string text) => WebUtility.HtmlEncode(text);
}
