using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Storage.Proposals;
using Sightglass.Training.Proposals;

namespace Sightglass.Web.Proposals;

/// <summary>The photographs that go with proposals, and nothing else that the data folder holds.</summary>
internal static class ProposalFiles
{
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/proposals/file/{name}", (string name, HttpContext context, ProposalDesk desk) =>
    {
        Proposal? proposal = desk.All().FirstOrDefault(p => p.File == name);
        if (proposal is null || desk.FileOf(proposal) is not { } file)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "private, max-age=604800, immutable";
        return Results.Bytes(file, Path.GetExtension(proposal.Becomes) switch { ".png" => "image/png", ".webp" => "image/webp", _ => "image/jpeg" });
    });
}
