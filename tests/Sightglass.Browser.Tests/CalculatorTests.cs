using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>Calculators as a person at a keyboard or a phone uses them.</summary>
public sealed class CalculatorTests(Site site) : IClassFixture<Site>
{
    [Theory]
    [InlineData("/calculators", ColorScheme.Light, 1440, 900)]
    [InlineData("/calculators", ColorScheme.Dark, 390, 844)]
    [InlineData("/calculators/stopping", ColorScheme.Light, 1440, 900)]
    [InlineData("/calculators/wheel-loads?body=72 t&truck=8 t&wheelset=4 t&trucks-apart=9 m&axles-apart=2.7 m&body-spring=1.5 kN/mm&axle-spring=1.2 kN/mm&broken=right 1", ColorScheme.Light, 1920, 1080)]
    [InlineData("/calculators/head-end-voltage", ColorScheme.Dark, 1440, 900)]
    [InlineData("/calculators/stopping?speed=79", ColorScheme.Dark, 390, 844)]
    public async Task Pages_LookedAtByAxe_NothingFound(string path, ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open(path, width, height, scheme);
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, $"calculator-{path.Split('/', '?')[2..].FirstOrDefault("list")}-{width}");
    }

    /// <summary>The result follows every letter; what is wrong is said at its field; the address holds it all and gives it to another browser.</summary>
    [Fact]
    public async Task Calculator_Typed_FollowsAndKeepsItInTheAddress()
    {
        IPage page = await site.Open("/calculators/stopping");
        ILocator distance = page.Locator(".calc-results dd").First, speed = page.GetByLabel("speed", new() { Exact = true });
        await Expect(distance).ToContainTextAsync("798.3");
        await Expect(distance).ToContainTextAsync("ft");

        // By keyboard alone: from one field to the next, and over what stands there.
        await speed.FocusAsync();
        await page.Keyboard.PressAsync("ControlOrMeta+a");
        await page.Keyboard.TypeAsync("100 km/h", new() { Delay = 20 });
        await Expect(speed).ToHaveValueAsync("100 km/h");
        await Expect(distance).ToContainTextAsync("511.4");
        await Expect(page.Locator(".formula b").First).ToHaveTextAsync("100 km/h");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByLabel("deceleration")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ControlOrMeta+a");
        await page.Keyboard.PressAsync("Delete");
        await Expect(page.GetByText("“deceleration” is missing: when the brakes are full. Write it like “0.9 m/s^2”.")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("deceleration")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.Locator(".calc-results")).ToHaveCountAsync(0);
        await page.Keyboard.TypeAsync("1 m/s^2", new() { Delay = 20 });
        await Expect(distance).ToContainTextAsync("468.5");
        await page.GetByRole(AriaRole.Button, new() { Name = "US" }).ClickAsync();
        await Expect(distance).ToContainTextAsync("1\u202F537\u202Fft");
        await Expect(page).ToHaveURLAsync(new Regex("speed=100.*km.*in=us"));

        IPage other = await site.Open(new Uri(page.Url).PathAndQuery);
        await Expect(other.Locator(".calc-results dd").First).ToContainTextAsync("1\u202F537\u202Fft");
        await Expect(other.GetByLabel("speed", new() { Exact = true })).ToHaveValueAsync("100 km/h");
    }

    /// <summary>From the list to a calculator and to another one: each begins with its own values.</summary>
    [Fact]
    public async Task List_ACalculatorChosen_OpensItAndLeadsBack()
    {
        IPage page = await site.Open("/calculators");
        await page.GetByRole(AriaRole.Link, new() { Name = "Horn" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync("Horn · Sightglass");
        await Expect(page.GetByLabel("distance", new() { Exact = true })).ToHaveValueAsync("400 ft");
        await page.Locator(".eyebrow").GetByRole(AriaRole.Link, new() { Name = "Calculators" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Lights" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync("Lights · Sightglass");
        await Expect(page.GetByLabel("distance", new() { Exact = true })).ToHaveValueAsync("300 m");
    }

    [Fact]
    public async Task Choice_OfABrokenSpring_ChangesTheWheels()
    {
        IPage page = await site.Open("/calculators/wheel-loads");
        await page.GetByLabel("broken").SelectOptionAsync("left 3");
        await Expect(page.GetByText("A frame rests on its stop: it rides there without a spring.")).ToBeVisibleAsync();
        await Expect(page).ToHaveURLAsync(new Regex("broken=left"));
    }
}
