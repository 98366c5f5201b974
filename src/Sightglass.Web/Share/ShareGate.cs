using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Sightglass.Web.Bets;
using Sightglass.Web.WalkDown;

namespace Sightglass.Web.Share;

/// <summary>What comes over the network reaches the walk-down, when the phone is paired, and the answers to a bet, which carry nobody's name, and papers whose code it read; nothing else.</summary>
internal static class ShareGate
{
    public const string Cookie = "sightglass-phone";

    /// <summary>What a phone sees before it is paired: how to pair, and how that page looks.</summary>
    private static readonly string[] s_open = ["/pair", "/certificate.cer", "/walkdown.css", "/mark.svg"];

    /// <summary>Listens on the network, under the certificate.</summary>
    public static void Listen(KestrelServerOptions kestrel, int port, Sharing sharing) => kestrel.Listen(IPAddress.Any, port, options =>
    {
        options.Use(next => connection =>
        {
            connection.Features.Set(new SharedLine());
            return next(connection);
        });
        options.UseHttps(sharing.Certificate);
    });

    public static void Use(WebApplication app, Sharing sharing) => app.Use((context, next) =>
    {
        if (context.Features.Get<SharedLine>() is null)
        {
            return next();
        }

        if (context.Request.Path.StartsWithSegments(AnswerPage.Root) || context.Request.Path.StartsWithSegments(PhonePapers.Root))
        {
            return next();
        }

        if (!context.Request.Path.StartsWithSegments(WalkDownFiles.Root, out PathString rest))
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return Task.CompletedTask;
        }

        if (s_open.Contains(rest.Value, StringComparer.Ordinal) || rest.StartsWithSegments("/look") || sharing.Pairing.IsPaired(context.Request.Cookies[Cookie]))
        {
            return next();
        }

        if (HttpMethods.IsGet(context.Request.Method) && rest.Value is "" or "/")
        {
            context.Response.Redirect(WalkDownFiles.Root + "/pair");
            return Task.CompletedTask;
        }

        context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        return Task.CompletedTask;
    });
}
