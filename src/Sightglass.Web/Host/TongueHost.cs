using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Extensions;
using Microsoft.AspNetCore.WebUtilities;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Host;

/// <summary>Each browser is answered in the language that it has chosen; the choice is a part of an address once, and a cookie from then on.</summary>
internal static class TongueHost
{
    public const string Cookie = "sightglass-language";

    /// <summary>What an address asks with: <c>?language=es</c>.</summary>
    public const string Asks = "language";

    private const int Days = 400;

    public static void Use(WebApplication app, TonguesOffered tongues) => app.Use(async (context, next) =>
    {
        if (HttpMethods.IsGet(context.Request.Method) && tongues.Find(context.Request.Query[Asks]) is { } asked)
        {
            context.Response.Cookies.Append(Cookie, asked.Code, new() { HttpOnly = true, Secure = context.Request.IsHttps, SameSite = SameSiteMode.Lax, Path = "/", MaxAge = TimeSpan.FromDays(Days) });
            context.Response.Redirect(Without(context.Request));
            return;
        }

        using IDisposable speaking = (tongues.Find(context.Request.Cookies[Cookie]) ?? tongues.Usual).Speak();
        await next(context);
    });

    /// <summary>An address that is opened in the language spoken here; as it is where that is the usual one.</summary>
    public static Uri AsHere(Uri address, TonguesOffered tongues) =>
        Tongue.Spoken.Code == tongues.Usual.Code ? address : new(QueryHelpers.AddQueryString(address.AbsoluteUri, Asks, Tongue.Spoken.Code));

    // Of this host alone, whatever the address says: the path begins with one stroke.
    private static string Without(HttpRequest request)
    {
        QueryBuilder rest = new(request.Query.Where(q => q.Key != Asks).SelectMany(q => q.Value.Select(v => KeyValuePair.Create(q.Key, v ?? ""))));
        return "/" + request.Path.ToUriComponent().TrimStart('/') + rest.ToQueryString();
    }
}
