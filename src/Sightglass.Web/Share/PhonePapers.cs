using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.WebUtilities;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Html;
using Sightglass.Paper.Papers;
using Sightglass.Training.Papers;
using Sightglass.Web.Host;
using Sightglass.Web.Lesson;
using Sightglass.Web.Live;
using Sightglass.Web.Papers;

namespace Sightglass.Web.Share;

/// <summary>What the code on a paper opens on a phone: that paper as it stands today, to read, each address with its seal; nothing live.</summary>
internal static class PhonePapers
{
    public const string Root = "/paper";

    private const string OneLesson = "lesson", OneSystem = "system", TheWalk = "walk", OneCard = "card";
    private const string Seal = "seal", RoadNumber = "road-number";

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet($"{Root}/{OneLesson}", (HttpContext context, ShareDesk share, MachineRoom room, DataDesk data, TimeProvider clock) =>
            Send(context, share, OneLesson, () => LessonFiles.Plan(context, room, data, clock) is { } plan ? LessonPaper.Of(plan) : null));
        app.MapGet($"{Root}/{OneSystem}", (HttpContext context, ShareDesk share, MachineRoom room, string? system) =>
            Send(context, share, OneSystem, () => BookOf(context, room) is var book && book.Systems.ContainsKey(system ?? "") ? SystemPaper.Of(book, system!) : null));
        app.MapGet($"{Root}/{TheWalk}", (HttpContext context, ShareDesk share, MachineRoom room) => Send(context, share, TheWalk, () => WalkPaper.Of(BookOf(context, room))));
        app.MapGet($"{Root}/{OneCard}", (HttpContext context, ShareDesk share, PaperDesk desk, string? card) => Send(context, share, OneCard, () => Edition(desk, card) is { } edition ? desk.Paper(edition.Edition.Id, null) : null));
    }

    public static string? OfLesson(ShareDesk share, TonguesOffered tongues, ClassBook book, HttpRequest request) =>
        Address(share, tongues, OneLesson, [.. request.Query.Where(q => q.Key is not ("size" or "large")).Select(q => KeyValuePair.Create(q.Key, q.Value.ToString())).Where(a => a.Key != RoadNumber), .. Of(book)]);

    public static string? OfSystem(ShareDesk share, TonguesOffered tongues, ClassBook book, string system) => Address(share, tongues, OneSystem, [KeyValuePair.Create("system", system), .. Of(book)]);

    public static string? OfWalk(ShareDesk share, TonguesOffered tongues, ClassBook book) => Address(share, tongues, TheWalk, [.. Of(book)]);

    public static string? OfCard(ShareDesk share, TonguesOffered tongues, string name) => Address(share, tongues, OneCard, [KeyValuePair.Create("card", name)]);

    /// <summary>The machine that an address asks for, or the one that everybody sees.</summary>
    public static ClassBook BookOf(HttpContext context, MachineRoom room) => room.Shelf.BookOf(context.Request.Query[RoadNumber].FirstOrDefault() ?? room.Session.Start.RoadNumber, null);

    private static IEnumerable<KeyValuePair<string, string>> Of(ClassBook book) => book.RoadNumberInUse is { } number ? [KeyValuePair.Create(RoadNumber, number)] : [];

    /// <summary>Null where no phone reaches this computer.</summary>
    private static string? Address(ShareDesk share, TonguesOffered tongues, string what, KeyValuePair<string, string>[] asks)
    {
        if (share.Sharing is not { Address: { } at } sharing)
        {
            return null;
        }

        string query = QueryHelpers.AddQueryString($"{Root}/{what}", [.. asks.Append(KeyValuePair.Create(Seal, sharing.Seal.Of(what, asks))).Select(a => KeyValuePair.Create(a.Key, (string?)a.Value))]);
        return TongueHost.AsHere(new(at, query), tongues).AbsoluteUri;
    }

    private static IResult Send(HttpContext context, ShareDesk share, string what, Func<PaperDocument?> paper)
    {
        IEnumerable<KeyValuePair<string, string>> asks = context.Request.Query.Where(q => q.Key != Seal).Select(q => KeyValuePair.Create(q.Key, q.Value.ToString()));
        if (share.Sharing is not { } sharing || !sharing.Seal.Holds(what, asks, context.Request.Query[Seal].FirstOrDefault()) || paper() is not { } found)
        {
            return Results.Text(Say.It("No paper of this computer has this code any more. Print it again."), "text/plain; charset=utf-8", Encoding.UTF8, StatusCodes.Status404NotFound);
        }

        context.Response.Headers.CacheControl = "no-cache";
        return Results.Text(HtmlPage.Write(found), "text/html; charset=utf-8", Encoding.UTF8);
    }

    /// <summary>The one that people work by; where there is none the latest, which says so itself.</summary>
    private static EditionFile? Edition(PaperDesk desk, string? card) => desk.All().FirstOrDefault(c => c.Name == card) is { } shelf ? shelf.InForce ?? shelf.Latest : null;
}
