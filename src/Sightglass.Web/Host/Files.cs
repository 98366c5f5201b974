using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Drawing.Look;
using Sightglass.Paper;
using Sightglass.Web.Live;

namespace Sightglass.Web.Host;

/// <summary>Style, fonts, scripts and the book's photographs. All but the photographs are inside the program.</summary>
internal static class Files
{
    public static void Map(IEndpointRouteBuilder app, BookShelf shelf)
    {
        app.MapGet("/look/{**name}", (string name, HttpContext context) => Send(context, LookFiles.Open(name), LookFiles.ContentType(name)));
        app.MapGet("/assets/{name}", (string name, HttpContext context) => Send(context, Own("assets/" + name) ?? PaperFiles.Open(name), TypeOf(name)));
        app.MapGet("/_framework/blazor.web.js", (HttpContext context) => Send(context, Own("framework/blazor.web.js"), "text/javascript; charset=utf-8"));
        app.MapGet("/photo/found/{name}", (string name, HttpContext context, DataDesk data) => PhotoShelf.Found(shelf, name, data) is { } photo ? Send(context, new MemoryStream(photo.Bytes), photo.Type) : Results.NotFound());
        app.MapGet("/photo/{**name}", (string name, HttpContext context) => Photo(context, shelf, name));
    }

    /// <summary>A picture of the book, by its file; not found where the book does not name it.</summary>
    public static IResult Photo(HttpContext context, BookShelf shelf, string name) => Send(context, Photo(shelf, name), TypeOf(name));

    private static Stream? Own(string name) => typeof(Files).Assembly.GetManifestResourceStream(name);

    /// <summary>Only what the book names.</summary>
    private static FileStream? Photo(BookShelf shelf, string name)
    {
        bool named = shelf.Book.Pictures.Values.Any(p => p.File == name) || shelf.RoadNumbers.Any(n => shelf.BookOf(n, null).Items.Values.Any(i => i.Photo == name)) || shelf.Book.Items.Values.Any(i => i.Photo == name);
        string path = Path.GetFullPath(Path.Combine(shelf.Folder, name));
        return named && path.StartsWith(shelf.Folder + Path.DirectorySeparatorChar, StringComparison.Ordinal) && File.Exists(path) ? File.OpenRead(path) : null;
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

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".js" => "text/javascript; charset=utf-8",
        ".svg" => "image/svg+xml",
        ".png" => "image/png",
        ".jpg" or ".jpeg" => "image/jpeg",
        ".webp" => "image/webp",
        _ => "application/octet-stream",
    };
}
