using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sightglass.Web.Bets;

/// <summary>Where a phone says what its holder thinks: one small page without a live connection, and two addresses behind it.</summary>
internal static class AnswerPage
{
    private const int LongestBody = 1024;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/answer", (HttpContext context) => Send(context));
        app.MapGet("/answer/now", (BetTable table, Guid? phone) => Results.Json(Now(table, phone ?? Guid.Empty)));
        app.MapPost("/answer/say", SayAsync);
    }

    private static IResult Send(HttpContext context)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return Results.Stream(typeof(AnswerPage).Assembly.GetManifestResourceStream("assets/answer.html")!, "text/html; charset=utf-8");
    }

    /// <summary>What a phone may know: never what comes true before it has.</summary>
    private static AnswerNow Now(BetTable table, Guid phone) => table.Bet is { } bet
        ? new(bet.Name, bet.Asks, [.. bet.Answers.Select(a => a.Says)], table.Phase.ToString().ToLowerInvariant(), table.SaidBy(phone), table.Phase == BetPhase.Told ? table.Film?.Result.CameTrue : null, table.Phase == BetPhase.Told ? bet.Lesson : "")
        : new("", "", [], "nothing", null, null, "");

    private static async Task<IResult> SayAsync(HttpContext context, BetTable table)
    {
        if (!context.Request.HasJsonContentType() || context.Request.ContentLength is null or > LongestBody)
        {
            return Results.BadRequest();
        }

        try
        {
            return await context.Request.ReadFromJsonAsync<AnswerSaid>(context.RequestAborted) is { Bet: { } bet } said
                ? Results.Json(new { counts = table.Say(said.Phone, bet, said.Answer) })
                : Results.BadRequest();
        }
        catch (JsonException)
        {
            return Results.BadRequest();
        }
    }

    private sealed record AnswerNow(string Bet, string Asks, string[] Answers, string Phase, int? Mine, int? CameTrue, string Lesson);

    private sealed record AnswerSaid(Guid Phone, string? Bet, int Answer);
}
