using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Look;
using Sightglass.Paper;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>
/// Where a trainee comes in and works: two small pages and a line between them and here. They stand apart from the other pages, because they are all that the room's network reaches.
/// </summary>
internal static class TraineePages
{
    /// <summary>All that a trainee needs lies below it.</summary>
    public const string Root = "/drill";

    public const string Cookie = "sightglass-seat";

    private const int Days = 7;

    public static void Map(IEndpointRouteBuilder app, BookShelf shelf, TonguesOffered tongues, RoomDoor? door)
    {
        app.MapGet(Root, (HttpContext context, TrainingRoom room) => room.Find(context.Request.Cookies[Cookie]) is null ? Join(context, tongues, door, "") : Seat(context, tongues));
        app.MapPost(Root, (Delegate)((HttpContext context, TrainingRoom room) => ComeIn(context, room, tongues, door)));
        app.MapGet(Root + "/free", Free);
        app.MapGet(Root + "/line", (Delegate)TraineeLine.Serve);
        app.MapGet(Root + "/photo", (HttpContext context, TrainingRoom room, string at, int number) => TraineePhotos.Send(context, room, shelf, at, number));
        app.MapGet(Root + "/drill.js", (HttpContext context) => Send(context, typeof(TraineePages).Assembly.GetManifestResourceStream("assets/drill.js"), "text/javascript; charset=utf-8"));
        app.MapGet(Root + "/drill.css", (HttpContext context) => Send(context, typeof(TraineePages).Assembly.GetManifestResourceStream("assets/drill.css"), "text/css; charset=utf-8"));
        app.MapGet(Root + "/paper.css", (HttpContext context) => Send(context, PaperFiles.Open("paper.css"), "text/css; charset=utf-8"));
        app.MapGet(Root + "/mark.svg", (HttpContext context) => Send(context, typeof(TraineePages).Assembly.GetManifestResourceStream("assets/mark.svg"), "image/svg+xml"));
        app.MapGet(Root + "/look/{**name}", (string name, HttpContext context) => Send(context, LookFiles.Open(name), LookFiles.ContentType(name)));
    }

    private static IResult Send(HttpContext context, Stream? file, string type)
    {
        if (file is null)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = type.StartsWith("font", StringComparison.Ordinal) ? "public, max-age=604800" : "no-cache";
        return Results.Stream(file, type);
    }

    /// <summary>Back to the list: what is worked alone ends here.</summary>
    private static IResult Free(HttpContext context, TrainingRoom room)
    {
        if (room.Find(context.Request.Cookies[Cookie]) is { Drill.IsAlone: true } seat)
        {
            room.Free(seat);
        }

        return Results.Redirect(Root);
    }

    private static async Task<IResult> ComeIn(HttpContext context, TrainingRoom room, TonguesOffered tongues, RoomDoor? door)
    {
        if (!context.Request.HasFormContentType || context.Request.ContentLength is not < 2000)
        {
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        IFormCollection form = await context.Request.ReadFormAsync(context.RequestAborted);
        if (door is not null && RoomDoor.IsRoom(context) && door.Try(form["code"].ToString()) is { } shut)
        {
            return Join(context, tongues, door, shut, StatusCodes.Status403Forbidden);
        }

        if (room.Join(form["name"].ToString(), out _, out string key) is { } why)
        {
            return Join(context, tongues, door, why, StatusCodes.Status400BadRequest);
        }

        context.Response.Cookies.Append(Cookie, key, new() { HttpOnly = true, Secure = context.Request.IsHttps, SameSite = SameSiteMode.Strict, Path = Root, MaxAge = TimeSpan.FromDays(Days) });
        return Results.Redirect(Root);
    }

    private static IResult Join(HttpContext context, TonguesOffered tongues, RoomDoor? door, string wrong, int status = StatusCodes.Status200OK)
    {
        StringBuilder page = Begin(context, Say.It("Come in"));
        page.Append("<header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav>").Append(TongueLinks.Html(tongues, context.Request)).Append("</header><main id=\"main\" class=\"join\"><h1>").Append(Html.Encode(Say.It("Come in"))).Append("</h1><p class=\"lead\">");
        page.Append(Html.Encode(Say.It("You get a place in the room. The instructor sees your name and where you stand in the drill."))).Append("</p>");
        if (wrong.Length > 0)
        {
            page.Append("<p class=\"trouble\" role=\"alert\">").Append(Html.Encode(wrong)).Append("</p>");
        }

        page.Append("<form method=\"post\" action=\"/drill\">");
        if (door is not null && RoomDoor.IsRoom(context))
        {
            page.Append("<label for=\"code\">").Append(Html.Encode(Say.It("The code of the room, as the instructor says it"))).Append("</label><input type=\"text\" id=\"code\" name=\"code\" inputmode=\"numeric\" autocomplete=\"off\" maxlength=\"12\" required>");
        }

        page.Append("<label for=\"name\">").Append(Html.Encode(Say.It("Your name"))).Append("</label><input type=\"text\" id=\"name\" name=\"name\" maxlength=\"60\" autocomplete=\"name\" required><button class=\"btn key\" id=\"come\">").Append(Html.Encode(Say.It("Come in"))).Append("</button></form>");
        if (door is not null && RoomDoor.IsRoom(context) && !context.Request.IsHttps)
        {
            page.Append("<p class=\"small\">").Append(Html.Encode(Say.It("Whoever is on this network could read along: nothing secret belongs here."))).Append("</p>");
        }

        page.Append("</main></body></html>\n");
        return Page(context, page, status);
    }

    private static IResult Seat(HttpContext context, TonguesOffered tongues)
    {
        StringBuilder page = Begin(context, Say.It("Drill"));
        page.Append("<header class=\"head\"><span class=\"mark\">Sightglass</span>").Append(Html.Slot("head", "div", "class=\"drill-head\"")).Append(TongueLinks.Html(tongues, context.Request)).Append("</header>");
        page.Append("<p id=\"lost\" role=\"alert\" hidden>").Append(Html.Encode(Say.It("Connection lost. The clock stands, and nothing is lost; this page comes back by itself."))).Append("</p>");
        page.Append("<div class=\"drill\"><main id=\"main\" aria-busy=\"true\"><p class=\"small\">").Append(Html.Encode(Say.It("The page is being connected."))).Append("</p></main>").Append(Html.Slot("side", "aside", $"aria-label=\"{Html.Encode(Say.It("What you have with you"))}\"")).Append("</div>");
        page.Append("<footer class=\"foot\"><span class=\"keys\"><span><kbd>←</kbd> <kbd>→</kbd> ").Append(Html.Encode(Say.It("walk"))).Append("</span><span><kbd>").Append(Html.Encode(Say.As("key", "Tab"))).Append("</kbd> ").Append(Html.Encode(Say.It("next thing within reach"))).Append("</span><span><kbd>C</kbd> ").Append(Html.Encode(Say.It("card")))
            .Append("</span><span><kbd>N</kbd> ").Append(Html.Encode(Say.It("note"))).Append("</span><span><kbd>R</kbd> ").Append(Html.Encode(Say.It("radio"))).Append("</span></span><span>").Append(Html.Encode(Say.It("Training aid with invented data. Local rules, the maker’s manual and qualified people decide."))).Append("</span></footer>");
        page.Append("<script type=\"module\" src=\"/drill/drill.js\"></script></body></html>\n");
        return Page(context, page, StatusCodes.Status200OK);
    }

    private static StringBuilder Begin(HttpContext context, string title)
    {
        string theme = context.Request.Query["theme"].ToString() is "light" or "dark" ? $" data-theme=\"{context.Request.Query["theme"]}\"" : "";
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"").Append(Tongue.Spoken.Code).Append('"').Append(theme).Append("><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>").Append(Html.Encode(title)).Append(" · Sightglass</title>");
        return page.Append("<link rel=\"icon\" href=\"/drill/mark.svg\" type=\"image/svg+xml\"><link rel=\"stylesheet\" href=\"/drill/look/sheet.css\"><link rel=\"stylesheet\" href=\"/drill/paper.css\"><link rel=\"stylesheet\" href=\"/drill/drill.css\"></head><body class=\"trainee\">");
    }

    private static IResult Page(HttpContext context, StringBuilder page, int status)
    {
        context.Response.Headers.CacheControl = "no-store";
        return Results.Text(page.ToString(), "text/html; charset=utf-8", Encoding.UTF8, status);
    }
}
