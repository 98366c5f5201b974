using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sightglass.Paper.Reports;

namespace Sightglass.Web.Trials;

/// <summary>The whole report of a trial as a page that stands alone, to be kept or sent.</summary>
internal static class TrialFiles
{
    public static void Map(IEndpointRouteBuilder app) => app.MapGet("/trials/{card}/report", (string card, TrialDesk desk) =>
        desk.Last(card)?.Result is { } result ? Results.Text(TrialPage.Write([result]), "text/html; charset=utf-8") : Results.NotFound());
}
