using System.Collections.Immutable;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Paper.Photos;
using Sightglass.Storage.Lessons;
using Sightglass.Storage.Notes;
using Sightglass.Training.Lessons;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Share;

namespace Sightglass.Web.Lesson;

/// <summary>The lesson of an address as files: tagged PDF, and what is said as captions.</summary>
internal static class LessonFiles
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/lesson/paper.pdf", (HttpContext context, MachineRoom room, DataDesk data, ShareDesk share, TonguesOffered tongues, TimeProvider clock, string? size, bool? large) =>
            Plan(context, room, data, clock) is { } plan && (size is null ? PaperSheet.Default(PaperLook.Sheet) : PaperSheet.Find(size)) is { } sheet && sheet.Fits(PaperLook.Sheet)
                ? Send(plan, PhonePapers.OfLesson(share, tongues, plan.Route.Book, context.Request), PhotoShelf.Album(room.Shelf, plan.Route.Book, data), clock, sheet with { Large = large is true })
                : Results.NotFound());
        app.MapGet("/lesson/said.vtt", (HttpContext context, MachineRoom room, DataDesk data, TimeProvider clock) =>
            Plan(context, room, data, clock) is { } plan ? Results.Text(WebVtt.Write(Narration.Of(plan)), "text/vtt", Encoding.UTF8) : Results.NotFound());
    }

    private static IResult Send(LessonPlan plan, string? address, PaperAlbum album, TimeProvider clock, PaperSheet sheet)
    {
        PaperDocument paper = LessonPaper.Of(plan, address, sheet, album);
        return Results.File(PdfPaper.Write(paper with { Printed = DateOnly.FromDateTime(clock.GetLocalNow().DateTime) }, sheet).Bytes, "application/pdf");
    }

    /// <summary>The lesson that an address asks for; null where there is no such walk.</summary>
    public static LessonPlan? Plan(HttpContext context, MachineRoom room, DataDesk data, TimeProvider clock)
    {
        ClassBook book = PhonePapers.BookOf(context, room);
        LessonAsk ask = new(book, Text("shows"), Number("people"), Number("stations"), Number("minutes"), Number("words"), Text("depth"), Text("audience"));
        LessonDesk kept = new(data.Folder, clock);
        ImmutableArray<LessonEdit> edits = Guid.TryParse(Text("kept"), out Guid id) && kept.Find(id) is { } lesson && lesson.Book == book.Title ? [.. kept.EditsOf(id)] : [];
        return LessonPlanner.Plan(book, ask.Request(edits, new DefectDesk(data.Folder, clock), DateOnly.FromDateTime(clock.GetLocalNow().Date)));

        string? Text(string key) => context.Request.Query.TryGetValue(key, out var value) ? value.ToString() : null;

        int? Number(string key) => int.TryParse(Text(key), System.Globalization.NumberStyles.Integer, System.Globalization.CultureInfo.InvariantCulture, out int number) ? number : null;
    }
}
