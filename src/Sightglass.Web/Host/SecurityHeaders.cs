using Microsoft.AspNetCore.Builder;
using Sightglass.Web.Share;
using Sightglass.Web.WalkDown;

namespace Sightglass.Web.Host;

/// <summary>Pages take everything from here and nothing from elsewhere; no script stands in a page itself.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; font-src 'self'; img-src 'self' data:; media-src 'self'; connect-src 'self'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>On every answer. A phone shows what it photographed and recorded itself, and a worker opens its page without a network; a paper that stands alone has its typefaces in itself.</summary>
    public static void Use(WebApplication app) => app.Use((context, next) =>
    {
        context.Response.Headers.ContentSecurityPolicy = context.Request.Path.StartsWithSegments(WalkDownFiles.Root)
            ? Policy.Replace("img-src 'self' data:; media-src 'self'", "img-src 'self' data: blob:; media-src 'self' blob:; worker-src 'self'", StringComparison.Ordinal)
            : context.Request.Path.StartsWithSegments(PhonePapers.Root) ? Policy.Replace("font-src 'self'", "font-src 'self' data:", StringComparison.Ordinal)
            : Policy;
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers["Referrer-Policy"] = "no-referrer";
        return next();
    });
}
