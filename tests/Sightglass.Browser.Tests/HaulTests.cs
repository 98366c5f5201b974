using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A train over a route, as an instructor asks for it.</summary>
public sealed class HaulTests(Site site) : IClassFixture<Site>
{
    private const string Page = "/routes/Saltmarsh%20to%20Windlass";
    private const string Asked = Page + "?train=local%20train&fuel=60%20%25&stop-at=12%20mi";

    /// <summary>A run waits for the plan of its train, beside the tests of other projects.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 180_000 };

    [Theory]
    [InlineData("/routes", ColorScheme.Light, 1440, 900)]
    [InlineData(Asked, ColorScheme.Light, 1440, 900)]
    [InlineData(Asked, ColorScheme.Dark, 390, 844)]
    public async Task Pages_LookedAtByAxe_NothingFound(string path, ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open(path, width, height, scheme);
        if (path == Asked)
        {
            await Expect(page.Locator(".haul-verdict")).ToBeVisibleAsync(s_patience);
        }

        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, $"haul-{(path == Asked ? "one" : "list")}-{width}");
    }

    /// <summary>By keyboard: a wrong milepost is told at its field and nothing else is lost; put right it runs, and the address holds what was said.</summary>
    [Fact]
    public async Task Haul_WrongThenRight_RunsAndKeepsItsAddress()
    {
        IPage page = await site.Open(Page);
        ILocator stop = page.GetByLabel("Stopped at");
        await stop.FillAsync("soon");
        await page.GetByLabel("Fuel", new() { Exact = true }).FillAsync("60 %");
        await stop.PressAsync("Enter");
        await Expect(page.Locator("#haul-stopsat-wrong")).ToContainTextAsync("write a milepost", new() { Timeout = 60_000 });
        await Expect(page.GetByLabel("Fuel", new() { Exact = true })).ToHaveValueAsync("60 %");
        await stop.FillAsync("12 mi");
        await stop.PressAsync("Enter");
        await Expect(page.Locator(".haul-verdict")).ToContainTextAsync("It arrives at Windlass Junction", new() { Timeout = 180_000 });
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("stop-at=12%20mi"));
    }
}
