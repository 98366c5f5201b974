using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Paper.Document;
using Sightglass.Paper.Pdf;
using Sightglass.Web.Host;
using Sightglass.Web.Share;

namespace Sightglass.Web.Papers;

/// <summary>Editions of cards as tagged PDF, for the printer.</summary>
internal static class CardFiles
{
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/papers/card.pdf", Send);

    private static IResult Send(PaperDesk desk, ShareDesk share, TonguesOffered tongues, Guid edition, string? size, bool? large)
    {
        PaperSheet? sheet = size is null ? PaperSheet.A6 : PaperSheet.Find(size);
        return sheet is not null && sheet.Fits(PaperLook.Pocket) && desk.Paper(edition, name => PhonePapers.OfCard(share, tongues, name)) is { } paper
            ? Results.File(PdfPaper.Write(paper, sheet with { Large = large == true }).Bytes, "application/pdf")
            : Results.NotFound();
    }
}
