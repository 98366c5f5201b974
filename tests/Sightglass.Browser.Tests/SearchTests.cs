using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>Why something does not come about, as somebody at the telephone uses it.</summary>
public sealed class SearchTests(Site site) : IClassFixture<Site>
{
    private const string Page = "/searches/it%20does%20not%20load";

    /// <summary>The first page waits for everything to be put wrong, beside the tests of other projects.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 180_000 };

    [Theory]
    [InlineData("/searches", ColorScheme.Light, 1440, 900)]
    [InlineData(Page, ColorScheme.Light, 1440, 900)]
    [InlineData(Page, ColorScheme.Dark, 390, 844)]
    [InlineData(Page, ColorScheme.Light, 1920, 1080)]
    public async Task Pages_LookedAtByAxe_NothingFound(string path, ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open(path, width, height, scheme);
        if (path == Page)
        {
            await Expect(page.Locator(".why-causes li").First).ToBeVisibleAsync(s_patience);
        }

        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, $"search-{(path == Page ? "one" : "list")}-{width}");
    }

    /// <summary>Lamps answered one after the other lead to the parking brake; an answer taken back opens the rest again. Answers by keyboard alone.</summary>
    [Fact]
    public async Task Search_Answered_LeadsToTheCause()
    {
        IPage page = await site.Open("/searches");
        await page.GetByRole(AriaRole.Link, new() { Name = "It does not load" }).ClickAsync();
        ILocator first = page.Locator(".why-causes li").First;
        await Expect(first).ToBeVisibleAsync(s_patience);
        await Expect(page.Locator(".why-looks")).ToContainTextAsync("labelled “Power allowed”");
        await Answer(page, "Field lamp", "lit");
        await Answer(page, "A notch is heard at the engine", "yes");
        await Answer(page, "Parking brake lamp", "lit");
        await Expect(first).ToContainTextAsync("Parking brake control stands set");
        await Site.Keep(page, "why");
        await Expect(first).ToContainTextAsync("9");
        await page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Parking brake lamp" }).GetByRole(AriaRole.Button, new() { Name = "take back" }).PressAsync("Enter");
        await Expect(page.Locator(".why-looks .done")).ToHaveCountAsync(2);
        await Expect(page.Locator(".why-causes li")).Not.ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin again" }).PressAsync("Enter");
        await Expect(page.Locator(".why-looks .done")).ToHaveCountAsync(0);
    }

    /// <summary>The living machine answers for itself, from what can be seen of it.</summary>
    [Fact]
    public async Task Search_AskedOfTheMachine_IsAnsweredByIt()
    {
        IPage page = await site.Open(Page);
        await Expect(page.Locator(".why-causes li").First).ToBeVisibleAsync(s_patience);
        await page.GetByRole(AriaRole.Button, new() { Name = "Ask the machine as it stands" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("as it stands");
        await Expect(page.Locator(".why-looks .done").First).ToBeVisibleAsync();
        await Site.Keep(page, "why-machine");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin again" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Status)).ToHaveCountAsync(0);
    }

    private static Task Answer(IPage page, string look, string answer) =>
        page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = look }).GetByRole(AriaRole.Button, new() { Name = answer, Exact = true }).PressAsync("Enter");
}
