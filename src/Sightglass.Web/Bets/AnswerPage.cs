using System.Net;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Basics.Language;
using Sightglass.Drawing.Look;
using Sightglass.Web.Host;

namespace Sightglass.Web.Bets;

/// <summary>Where a phone says what its holder thinks: one small page without a live connection, and two addresses behind it.</summary>
internal static class AnswerPage
{
    /// <summary>All that a phone needs lies below it.</summary>
    public const string Root = "/answer";

    private const int LongestBody = 1024;

    public static void Map(IEndpointRouteBuilder app, TonguesOffered tongues)
    {
        app.MapGet(Root, (HttpContext context) => Page(context, tongues));
        app.MapGet("/answer/answer.js", (HttpContext context) => Send(context, "answer.js", "text/javascript; charset=utf-8"));
        app.MapGet("/answer/pages.css", (HttpContext context) => Send(context, "pages.css", "text/css; charset=utf-8"));
        app.MapGet("/answer/mark.svg", (HttpContext context) => Send(context, "mark.svg", "image/svg+xml"));
        app.MapGet("/answer/look/{**name}", (string name, HttpContext context) => LookFiles.Open(name) is { } file ? Results.Stream(file, LookFiles.ContentType(name)) : Results.NotFound());
        app.MapGet("/answer/now", (BetTable table, Guid? phone) => Results.Json(Now(table, phone ?? Guid.Empty)));
        app.MapPost("/answer/say", SayAsync);
    }

    private static IResult Page(HttpContext context, TonguesOffered tongues)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return Results.Text($"""
            <!DOCTYPE html>
            <html lang="{Tongue.Spoken.Code}">
            <head>
              <meta charset="utf-8" />
              <meta name="viewport" content="width=device-width,initial-scale=1" />
              <title>{Encode(Say.It("Answer"))} · Sightglass</title>
              <link rel="icon" href="/answer/mark.svg" type="image/svg+xml" />
              <link rel="stylesheet" href="/answer/look/sheet.css" />
              <link rel="stylesheet" href="/answer/pages.css" />
            </head>
            <body class="answer">
              <main id="main">
                <h1 id="asks">{Encode(Say.It("Nothing is asked at the moment."))}</h1>
                <div id="answers" role="group" aria-labelledby="asks"></div>
                <p id="told" role="status"></p>
              </main>
              <footer>{TongueLinks.Html(tongues, context.Request)}</footer>
              <script type="application/json" id="words">{AnswerWords.Json()}</script>
              <script type="module" src="/answer/answer.js"></script>
            </body>
            </html>

            """, "text/html; charset=utf-8", Encoding.UTF8);
    }

    private static string Encode(string text) => WebUtility.HtmlEncode(text);

    private static IResult Send(HttpContext context, string asset, string type)
    {
        context.Response.Headers.CacheControl = "no-cache";
        return Results.Stream(typeof(AnswerPage).Assembly.GetManifestResourceStream($"assets/{asset}")!, type);
    }

    /// <summary>What a phone may know: never what comes true before it has.</summary>
    private static AnswerNow Now(BetTable table, Guid phone) => table.Bet is { } bet
        ? new(bet.Name, Say.Book(bet.Asks), [.. bet.Answers.Select(a => Say.Book(a.Says))], table.Phase.ToString().ToLowerInvariant(), table.SaidBy(phone), table.Phase == BetPhase.Told ? table.Film?.Result.CameTrue : null, table.Phase == BetPhase.Told ? Say.Book(bet.Lesson) : "")
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
