using System.Collections.Immutable;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Basics.Language;
using Sightglass.Paper.Document;
using Sightglass.Paper.Papers;
using Sightglass.Paper.Pdf;
using Sightglass.Training.Debrief;
using Sightglass.Web.Room;

namespace Sightglass.Web.Debrief;

/// <summary>The evaluation sheet of a drill as tagged PDF.</summary>
internal static class DebriefFiles
{
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/room/debrief/{number:int}/sheet.pdf", async (DebriefDesk desk, TimeProvider clock, int number, string? size, CancellationToken cancel) =>
        desk.Find(number) is { } drill && (size is null ? PaperSheet.Letter : PaperSheet.Find(size)) is { } sheet && sheet.Fits(PaperLook.Sheet) && (await desk.Of(drill, cancel)).Film is { } film
            ? Results.File(PdfPaper.Write(DebriefPaper.Of(film, Facts(drill, film)) with { Printed = DateOnly.FromDateTime(clock.GetLocalNow().DateTime) }, sheet).Bytes, "application/pdf")
            : Results.NotFound());

    /// <summary>What stands on the sheet beside what the run itself tells.</summary>
    public static DebriefFacts Facts(RoomDrill drill, DebriefFilm film) =>
        new(drill.Worked.GetValueOrDefault(film.Drill.Person, ""), drill.Number, drill.Record, DateOnly.FromDateTime(drill.Begun.LocalDateTime), drill.Start.Seed, drill.Start.Case)
        {
            Observed = [.. Observed(drill, film).Select(o => (o.Item, Word(o.Saw)))],
            Coached = drill.Coached,
            Agreement = string.Join(' ', AgreementWords.Of(drill)),
        };

    /// <summary>What is to be observed in a drill, with what was seen of it.</summary>
    public static IEnumerable<(string Item, Verdict Saw)> Observed(RoomDrill drill, DebriefFilm film) =>
        film.Drill.Drill.Observe.Union(drill.Observed.Keys).Select(o => (o, drill.Observed.GetValueOrDefault(o)));

    /// <summary>An assessor's word.</summary>
    public static string Word(Verdict verdict) => verdict switch
    {
        Verdict.Go => Say.As("verdict", "go"),
        Verdict.NoGo => Say.It("no go"),
        _ => Say.It("not seen"),
    };
}
