using System.Net;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Basics.Language;
using Sightglass.Web.Host;
using Sightglass.Web.Parts;
using Sightglass.Web.WalkDown;

namespace Sightglass.Web.Share;

/// <summary>What a phone sees first: the code, and how to trust this computer's certificate.</summary>
internal static class PairPage
{
    private const int Days = 60;

    public static void Map(IEndpointRouteBuilder app, Sharing sharing, TonguesOffered tongues)
    {
        app.MapGet(WalkDownFiles.Root + "/pair", (HttpContext context) => Page(context, sharing, tongues, context.Request.Query["code"], ""));
        app.MapPost(WalkDownFiles.Root + "/pair", (Delegate)((HttpContext context) => PairAsync(context, sharing, tongues)));
        app.MapGet(WalkDownFiles.Root + "/certificate.cer", () => Results.Bytes(sharing.Certificate.Export(X509ContentType.Cert), "application/x-x509-ca-cert", "sightglass.cer"));
    }

    private static async Task<IResult> PairAsync(HttpContext context, Sharing sharing, TonguesOffered tongues)
    {
        if (!context.Request.HasFormContentType || context.Request.ContentLength is not < 2000)
        {
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        IFormCollection form = await context.Request.ReadFormAsync(context.RequestAborted);
        PairAnswer answer = sharing.Pairing.Try(form["code"].ToString());
        if (answer.Token is not { } token)
        {
            return Page(context, sharing, tongues, "", answer.MustWait ? Say.It("Too many tries. Wait a minute, then use the code that the computer shows by then.") : Say.It("This is not the code, or it was used before. The computer shows the one that holds."), answer.MustWait ? 429 : 403);
        }

        context.Response.Cookies.Append(ShareGate.Cookie, token, new() { HttpOnly = true, Secure = context.Request.IsHttps, SameSite = SameSiteMode.Lax, Path = WalkDownFiles.Root, MaxAge = TimeSpan.FromDays(Days) });
        return Results.Redirect(WalkDownFiles.Root + "/");
    }

    private static IResult Page(HttpContext context, Sharing sharing, TonguesOffered tongues, string? code, string wrong, int status = 200)
    {
        context.Response.Headers.CacheControl = "no-store";
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"").Append(Tongue.Spoken.Code).Append("\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><base href=\"/walkdown/\"><title>").Append(Encode(Say.It("Pair this phone"))).Append(" · Sightglass</title>");
        page.Append("<link rel=\"icon\" href=\"mark.svg\" type=\"image/svg+xml\"><link rel=\"stylesheet\" href=\"look/sheet.css\"><link rel=\"stylesheet\" href=\"walkdown.css\"></head><body class=\"wd\"><header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav>").Append(TongueLinks.Html(tongues, context.Request)).Append("</header><main>");
        page.Append("<h1>").Append(Encode(Say.It("Pair this phone"))).Append("</h1><p class=\"lead\">").Append(Encode(Say.It("It then walks down the machine and hands in what you find. It reaches nothing else of the computer."))).Append("</p>");
        if (wrong.Length > 0)
        {
            page.Append("<p class=\"stand\" role=\"alert\">").Append(Encode(wrong)).Append("</p>");
        }

        page.Append("<form method=\"post\" action=\"pair\"><label class=\"field\" for=\"code\"><span>").Append(Encode(Say.It("The eight digits that the computer shows"))).Append("</span><input type=\"text\" id=\"code\" name=\"code\" inputmode=\"numeric\" autocomplete=\"one-time-code\" maxlength=\"12\" required value=\"");
        page.Append(WebUtility.HtmlEncode(new string([.. (code ?? "").Where(char.IsAsciiDigit).Take(8)]))).Append("\"></label><button class=\"btn key\">").Append(Encode(Say.It("Pair"))).Append("</button></form>");
        page.Append("<section class=\"trust\"><h2>").Append(Encode(Say.It("So that it opens without a network"))).Append("</h2><p>").Append(Encode(Say.It("The phone has to trust this computer’s certificate, once. Without that it can still hand in while the page is open."))).Append("</p><ol><li>");
        page.Append(Rich.Text($"{Rich.Link("certificate.cer", Say.It("Get the certificate"))} and compare its SHA-256 fingerprint with the one that the computer shows. Where they differ, stop: somebody is between.").Value).Append("</li>");
        foreach (string step in new[]
        {
            Say.It("Android: Settings, Security, Encryption and credentials, Install a certificate, CA certificate."),
            Say.It("iPhone: Settings, Profile downloaded, Install; then General, About, Certificate trust settings, switch it on."),
            Say.It("Afterwards, when the walk-down is done, remove it in the same place."),
        })
        {
            page.Append("<li>").Append(Encode(step)).Append("</li>");
        }

        page.Append("</ol><p class=\"num\">");
        page.Append(sharing.Fingerprint).Append("</p></section></main></body></html>\n");
        return Results.Text(page.ToString(), "text/html; charset=utf-8", Encoding.UTF8, status);
    }

    private static string Encode(string text) => WebUtility.HtmlEncode(text);
}
