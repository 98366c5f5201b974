using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Drawing.Look;
using Sightglass.Paper;
using Sightglass.Training.Routes;
using Sightglass.Training.WalkDowns;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.WalkDown;

/// <summary>The walk-down for phones: page, scripts, sheet and what is handed in, all below one address, so that one worker and one gate hold all of it.</summary>
internal static class WalkDownFiles
{
    public const string Root = "/walkdown";

    public static void Map(IEndpointRouteBuilder app, BookShelf shelf, TonguesOffered tongues)
    {
        app.MapGet(Root, (HttpContext context) => context.Request.Path.Value!.EndsWith('/')
            ? Text(context, WalkDownPaper.Served(Say.Book(shelf.Book.Notice), context.Request.Query["theme"], TongueLinks.Html(tongues, context.Request)), "text/html; charset=utf-8")
            : Results.Redirect(Root + "/" + context.Request.QueryString));
        app.MapGet(Root + "/sheet.json", (HttpContext context) => Sheet(context, shelf.Book));
        app.MapGet(Root + "/look/{**name}", (string name, HttpContext context) => Send(context, LookFiles.Open(name), LookFiles.ContentType(name)));
        app.MapGet(Root + "/walkdown.css", (HttpContext context) => Send(context, PaperFiles.Open("walkdown.css"), "text/css; charset=utf-8"));
        app.MapGet(Root + "/mark.svg", (HttpContext context) => Send(context, typeof(WalkDownFiles).Assembly.GetManifestResourceStream("assets/mark.svg"), "image/svg+xml"));
        foreach (string script in WalkDownPaper.ServedScripts.Append("worker.js"))
        {
            app.MapGet($"{Root}/{script}", (HttpContext context) => Text(context, WalkDownPaper.Script(script), "text/javascript; charset=utf-8"));
        }

        app.MapPost(Root + "/take", WalkDownIntake.TakeAsync);
    }

    private static IResult Sheet(HttpContext context, ClassBook book)
    {
        string? number = context.Request.Query["road-number"], purpose = context.Request.Query["purpose"];
        if (number is { Length: > 0 } && !book.RoadNumbers.ContainsKey(number))
        {
            return Results.Text(Say.With($"The book has no road number {number}; it has {string.Join(", ", book.RoadNumbers.Keys)}."), statusCode: StatusCodes.Status404NotFound);
        }

        ClassBook machine = number is { Length: > 0 } ? book.For(number) : book;
        RouteRequest? request = RoutePurposes.Find(purpose is { Length: > 0 } ? purpose : RouteRequest.Whole, machine);
        return request is null
            ? Results.Text(Say.With($"The book has no purpose {purpose}; there are: {string.Join("; ", RoutePurposes.Of(machine).Select(Say.Word))}."), statusCode: StatusCodes.Status404NotFound)
            : RoutePlanner.Plan(machine, request) is { } plan
                ? Text(context, WalkDownPaper.SheetOf(WalkDownSheet.Of(plan)), "application/json; charset=utf-8")
                : Results.Text(Say.It("There is no such walk: the book has no places, or its start cannot be left."), statusCode: StatusCodes.Status404NotFound);
    }

    private static IResult Text(HttpContext context, string text, string type)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return Results.Text(text, type, Encoding.UTF8);
    }

    private static IResult Send(HttpContext context, Stream? file, string type)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return file is null ? Results.NotFound() : Results.Stream(file, type);
    }
}
