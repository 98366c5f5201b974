using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.WebUtilities;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Host;

/// <summary>The other languages, each by its own name, as links on a page that is no component.</summary>
internal static class TongueLinks
{
    /// <summary>Links that open what was asked for in another language.</summary>
    public static string Html(TonguesOffered tongues, HttpRequest request) => string.Concat(tongues.Others.Select(t =>
        $"<a class=\"tongue\" lang=\"{t.Code}\" hreflang=\"{t.Code}\" rel=\"nofollow\" href=\"{WebUtility.HtmlEncode(AddressIn(request, t))}\">{WebUtility.HtmlEncode(t.Name)}</a>"));

    private static string AddressIn(HttpRequest request, Tongue tongue) =>
        QueryHelpers.AddQueryString(request.Path.ToUriComponent() + request.QueryString.ToUriComponent(), TongueHost.Asks, tongue.Code);
}
