using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A train on one sheet, as somebody at a terminal makes it up.</summary>
public sealed class TrainTests(Site site) : IClassFixture<Site>
{
    /// <summary>The first sheet waits for a train to be put together, beside the tests of other projects.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 120_000 };

    [Theory]
    [InlineData("/trains", ColorScheme.Light, 1440, 900)]
    [InlineData("/trains?train=night%20mail&grade=1.5", ColorScheme.Dark, 390, 844)]
    [InlineData("/trains?train=double-headed%20express", ColorScheme.Light, 1920, 1080)]
    public async Task Pages_LookedAtByAxe_NothingFound(string path, ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open(path, width, height, scheme);
        await Expect(page.Locator(".paper h1")).ToBeVisibleAsync(s_patience);
        await page.GetByText("Make up your own").ClickAsync();
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, $"trains-{width}");
    }

    /// <summary>A train is chosen, then changed line by line; a mistake is said at its line, and mended the sheet tells what follows. All by keyboard.</summary>
    [Fact]
    public async Task OwnTrain_WithAMistakeAndMended_IsChecked()
    {
        IPage page = await site.Open("/trains");
        await Expect(page.Locator(".paper .lead")).ToContainTextAsync("Nothing found that keeps it from leaving.", new() { Timeout = 120_000 });
        await page.Locator("#train").SelectOptionAsync("night mail");
        await Expect(page.Locator(".paper h1")).ToContainTextAsync("Night mail", new() { Timeout = 120_000 });
        await page.Locator("summary").PressAsync("Enter");
        ILocator own = page.Locator("#own");
        Assert.Contains("vehicle: baggage car", await own.InputValueAsync(), StringComparison.Ordinal);
        await own.FillAsync("vehicles:\n  - machine\n  - { vehicle: coahc }\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Check it" }).PressAsync("Enter");
        await Expect(page.Locator("#own-wrong")).ToContainTextAsync("Line 3: there is no car `coahc`.");
        await own.FillAsync("consist: Mine\nvehicles:\n  - machine\n  - { vehicle: coach, stands: { A truck cutout cock: closed } }\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Check it" }).PressAsync("Enter");
        await Expect(page.Locator(".paper .lead")).ToContainTextAsync("Not fit to leave.", new() { Timeout = 120_000 });
        await Expect(page.Locator(".paper .list").First).ToContainTextAsync("75\u202F% of the brakes work");
        await Expect(page.Locator("#own-wrong")).ToHaveCountAsync(0);
    }
}
