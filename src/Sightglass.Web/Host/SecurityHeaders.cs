using Microsoft.AspNetCore.Builder;

namespace Sightglass.Web.Host;

/// <summary>Pages take everything from here and nothing from elsewhere; no script stands in a page itself.</summary>
internal static class SecurityHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; font-src 'self'; img-src 'self' data:; connect-src 'self'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    public static void Use(WebApplication app) => app.Use((context, next) =>
    {
        context.Response.Headers.ContentSecurityPolicy = Policy;
        context.Response.Headers.XContentTypeOptions = "nosniff";
        context.Response.Headers["Referrer-Policy"] = "no-referrer";
        return next();
    });
}
