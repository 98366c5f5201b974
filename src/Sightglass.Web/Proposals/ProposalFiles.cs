using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.Proposals;
using Sightglass.Training.WalkDowns;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Proposals;

/// <summary>The photographs that go with proposals, the voice notes of walk-downs, and nothing else that the data folder holds.</summary>
internal static class ProposalFiles
{
    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/proposals/file/{name}", (string name, HttpContext context, ProposalDesk desk) =>
        {
            Proposal? proposal = desk.All().FirstOrDefault(p => p.File == name);
            return proposal is null || desk.FileOf(proposal) is not { } file
                ? Results.NotFound()
                : Send(context, new MemoryStream(file), Path.GetExtension(proposal.Becomes) switch { ".png" => "image/png", ".webp" => "image/webp", _ => "image/jpeg" });
        });
        app.MapGet("/proposals/voice/{name}", (string name, HttpContext context, WalkDownDesk desk, MachineRoom room, DataDesk data) =>
            desk.All(room.Shelf.Book.Title).Any(e => e.Voice == name) && data.Folder.Files.Open(name) is { } voice ? Send(context, voice, TypeOf(voice)) : Results.NotFound());
    }

    /// <summary>A file's name is the hash of what is in it: it never changes.</summary>
    private static IResult Send(HttpContext context, Stream file, string type)
    {
        context.Response.Headers.CacheControl = "private, max-age=604800, immutable";
        return Results.Stream(file, type, enableRangeProcessing: true);
    }

    private static string TypeOf(Stream voice)
    {
        byte[] start = new byte[VoiceFile.Told];
        _ = voice.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
        voice.Position = 0;
        return VoiceFile.Of(start)?.Type ?? "application/octet-stream";
    }
}
