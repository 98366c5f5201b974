using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Sightglass.Basics.Time;
using Sightglass.Web.Room;
using Sightglass.World;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A drill that is over, talked over at the wall: what decided it, what was known and what was so, what would have been.</summary>
public sealed class DebriefTests(Site site) : IClassFixture<Site>
{
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 120_000 };

    /// <summary>All by keyboard: to the turning point, along the lanes, to what would have been by the card, and back; then the sheet is printed.</summary>
    [Fact]
    public async Task Debrief_OfAFailedDrill_LeadsToWhatDecidedItAndToWhatWouldHaveBeen()
    {
        int number = Work();
        IPage page = await site.Open($"/room/debrief/{number}");
        await Expect(page.Locator("h1")).ToContainTextAsync("Not passed: nothing was reported by the end", new() { Timeout = 120_000 });
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("To the turning point") }).PressAsync("Enter");
        ILocator slider = page.Locator("#db-slide");
        await slider.FocusAsync();
        await slider.PressAsync("Home");
        await Expect(page.Locator("#db-moment-head")).ToHaveTextAsync("At 0:00");
        await slider.PressAsync("ArrowRight");
        await Expect(page.Locator("#db-moment-head")).Not.ToHaveTextAsync("At 0:00");
        await slider.PressAsync("Home");
        await Expect(page.Locator("#db-way option")).Not.ToHaveCountAsync(2, new() { Timeout = 120_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Run it" }).PressAsync("Enter");
        await Expect(page.Locator(".db-came .lead")).ToContainTextAsync("Passed", new() { Timeout = 120_000 });
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at it" }).PressAsync("Enter");
        await Expect(page.Locator("h1")).ToContainTextAsync("Passed");
        await page.GetByRole(AriaRole.Button, new() { Name = "Back to what was" }).PressAsync("Enter");
        await Expect(page.Locator("h1")).ToContainTextAsync("Not passed");
        IAPIResponse sheet = await page.APIRequest.GetAsync($"{site.Address}/room/debrief/{number}/sheet.pdf?size=a4");
        Assert.True(sheet.Ok);
        Assert.StartsWith("%PDF", System.Text.Encoding.Latin1.GetString(await sheet.BodyAsync())[..8], StringComparison.Ordinal);
        foreach ((int width, ColorScheme scheme) in new[] { (390, ColorScheme.Dark), (1920, ColorScheme.Light) })
        {
            page = await site.Open($"/room/debrief/{number}", width, 900, scheme);
            await Expect(page.Locator(".db-sheet")).ToBeVisibleAsync(s_patience);
            AxeResult result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
            await Site.Keep(page, $"debrief-{width}");
        }
    }

    /// <summary>Somebody walks, does nothing, and says that it is done.</summary>
    private int Work()
    {
        TrainingRoom room = site.Room;
        Assert.Null(room.Join("A. Trainee", out Seat? seat, out _));
        using IDisposable there = room.Open(seat!);
        Assert.Null(room.Begin("a headlight is dark", 1, 2, [seat!]));
        RoomDrill drill = seat!.Drill!;
        DrillSession session = drill.Session!;
        session.Release(HoldReason.Brief);
        Assert.Null(session.Act(new WorldAction.Walk(session.Drill.Person, session.Plan.Book.Items["headlight breaker"].Places[0])));
        session.Forward(SimTime.FromSeconds(90));
        Assert.Null(session.Act(new WorldAction.Declare(session.Drill.Person)));
        session.Forward(SimTime.FromSeconds(2000));
        Assert.Null(room.End(drill));
        return drill.Number;
    }
}
