using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.WalkDowns;

namespace Sightglass.Web.WalkDown;

/// <summary>What a phone hands in over the network: the same file as by hand, an entry at a time. Acknowledged when it is on disk.</summary>
internal static class WalkDownIntake
{
    private const int MostBytes = 48 << 20;

    public static async Task<IResult> TakeAsync(HttpContext context, WalkDownDesk desk, ProposalDesk proposals)
    {
        if (!context.Request.HasJsonContentType() || !IsFromHere(context))
        {
            // A page of somebody else's cannot send this without being asked first.
            return Results.StatusCode(StatusCodes.Status415UnsupportedMediaType);
        }

        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = MostBytes;
        }

        using MemoryStream body = new();
        try
        {
            await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        }
        catch (BadHttpRequestException)
        {
            return Results.StatusCode(StatusCodes.Status413PayloadTooLarge);
        }

        List<string> found = [];
        return proposals.Text.Book is not { } book ? Results.StatusCode(StatusCodes.Status503ServiceUnavailable)
            : WalkDownReader.Read(body.GetBuffer().AsMemory(0, (int)body.Length), book, found) is { } result
                ? Results.Json(new { kept = desk.Take(result).Kept.Select(k => new { id = k.Id, revision = k.Revision }) })
                : Results.Json(new { found }, statusCode: StatusCodes.Status400BadRequest);
    }

    private static bool IsFromHere(HttpContext context) =>
        context.Request.Headers.Origin is not [{ Length: > 0 } origin] || origin == $"{context.Request.Scheme}://{context.Request.Host}";
}
