using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Share;

namespace Sightglass.Web.Papers;

/// <summary>Sheets of the machine that is served, as tagged PDF: one system, the walk.</summary>
internal static class SheetFiles
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/papers/system.pdf", (MachineRoom room, DataDesk data, ShareDesk share, TonguesOffered tongues, TimeProvider clock, string system, string? size, string? units) =>
            BookOf(room) is var book && book.Systems.ContainsKey(system) ? Send(SystemPaper.Of(book, system, PhonePapers.OfSystem(share, tongues, book, system), SheetOf(size, PaperLook.Sheet), PhotoShelf.Album(room.Shelf, book, data), UnitsOf(units)).In(UnitsOf(units)), size, clock) : Results.NotFound());
        app.MapGet("/papers/walk.pdf", (MachineRoom room, DataDesk data, ShareDesk share, TonguesOffered tongues, TimeProvider clock, string? size) =>
            Send(WalkPaper.Of(BookOf(room), PhonePapers.OfWalk(share, tongues, BookOf(room)), WalkPaper.LettersOn(size ?? PaperSheet.A2.Name), PhotoShelf.Album(room.Shelf, BookOf(room), data)), size, clock));
    }

    private static ClassBook BookOf(MachineRoom room) => room.Shelf.BookOf(room.Session.Start.RoadNumber, null);

    private static PaperUnits UnitsOf(string? named) => Enum.TryParse(named, ignoreCase: true, out PaperUnits units) && Enum.IsDefined(units) ? units : PaperUnits.Book;

    private static PaperSheet? SheetOf(string? size, PaperLook look) => size is null ? PaperSheet.Default(look) : PaperSheet.Find(size);

    private static IResult Send(PaperDocument paper, string? size, TimeProvider clock)
    {
        PaperSheet? sheet = SheetOf(size, paper.Look);
        return sheet is not null && sheet.Fits(paper.Look)
            ? Results.File(PdfPaper.Write(paper with { Printed = DateOnly.FromDateTime(clock.GetLocalNow().DateTime) }, sheet).Bytes, "application/pdf")
            : Results.NotFound();
    }
}
