using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Book.Consists;
using Sightglass.Book.Model;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Web.Live;

namespace Sightglass.Web.Trains;

/// <summary>The train of an address, and its sheet as tagged PDF.</summary>
internal static class TrainFiles
{
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/trains/paper.pdf", async (MachineRoom room, TrainDesk desk, TimeProvider clock, string? train, string? grade, string? adhesion, string? size) =>
        ConsistOf(room.Shelf.Book, train, grade, adhesion) is { } consist && (size is null ? PaperSheet.Letter : PaperSheet.Find(size)) is { } sheet && sheet.Fits(PaperLook.Sheet)
            ? Results.File(PdfPaper.Write(TrainPaper.Of(await desk.Of(consist)) with { Printed = DateOnly.FromDateTime(clock.GetLocalNow().DateTime) }, sheet).Bytes, "application/pdf")
            : Results.NotFound());

    /// <summary>The train that an address names, or the first of the book; null where it lists none.</summary>
    public static Train? TrainOf(ClassBook book, string? named) => book.Trains.GetValueOrDefault(named ?? "") ?? book.Trains.Values.MinBy(t => t.Span);

    /// <summary>The same with its way.</summary>
    public static Consist? ConsistOf(ClassBook book, string? train, string? grade, string? adhesion) => TrainOf(book, train) is { } found
        ? Consist.Of(found) with { Grade = Percent(grade, 0, 10) ?? 0, Adhesion = Percent(adhesion, 1, 50) ?? Consist.UsualAdhesion }
        : null;

    /// <summary>A share from what somebody typed in per cent; null for what is none or lies outside.</summary>
    public static double? Percent(string? typed, double least, double most) =>
        double.TryParse(typed, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= least && value <= most ? value / 100 : null;
}
