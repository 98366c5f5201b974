using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A card tried from a page, and a drill made of what failed.</summary>
public sealed class TrialTests(CopiedSite site) : IClassFixture<CopiedSite>
{
    private const string Draft = "/trials/empty-a-leaking-compartment-draft";

    /// <summary>A trial takes its time, beside the tests of other projects.</summary>
    private const float Patience = 180_000;

    /// <summary>Issue: a counterexample of a trial becomes a drill in one click. By keyboard alone, to the drill that is set up in the room.</summary>
    [Fact]
    public async Task Failure_MadeIntoADrill_CanBeSetUpInTheRoom()
    {
        IPage page = await site.Open("/trials");
        await Look(page, "trials-1440");
        await page.GetByRole(AriaRole.Link, new() { Name = "Empty a leaking compartment, first draft" }).PressAsync("Enter");
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        await page.Locator("#cases").SelectOptionAsync("64");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).PressAsync("Enter");
        await Expect(page.Locator(".trial-verdict h2")).ToContainTextAsync("The card fails in", new() { Timeout = Patience });
        await page.Locator(".trial-fails .btn").First.PressAsync("Enter");
        ILocator link = page.GetByRole(AriaRole.Link, new() { Name = "Set it up in the room" });
        await Expect(link).ToBeVisibleAsync(new() { Timeout = Patience });
        await Look(page, "trial-1440");
        Assert.Contains(site.Shelf.Book.Drills, d => d.Key == "leaking compartment, as a trial found it" && d.Value.SolvedBy.Contains("empty-a-leaking-compartment"));
        Assert.Equal(200, (await page.APIRequest.GetAsync(site.Address + Draft + "/report")).Status);
        await link.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Dialog)).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Leaking compartment, as a trial found it");
    }

    [Theory]
    [InlineData(ColorScheme.Dark, 390, 844)]
    [InlineData(ColorScheme.Light, 1920, 1080)]
    public async Task Pages_LookedAtByAxe_NothingFound(ColorScheme scheme, int width, int height)
    {
        await Look(await site.Open("/trials", width, height, scheme), $"trials-{width}");
        IPage page = await site.Open("/trials/empty-a-leaking-compartment", width, height, scheme);
        await page.Locator("#cases").SelectOptionAsync("64");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Expect(page.Locator(".trial-verdict h2")).ToContainTextAsync("at least", new() { Timeout = Patience });
        await Look(page, $"trial-{width}");
    }

    private static async Task Look(IPage page, string name)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, name);
    }
}
