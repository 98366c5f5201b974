using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Sightglass.Web.Room;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>The instructor's room: set up, watched, held, looked at in depth.</summary>
public sealed class RoomTests(Site site) : IClassFixture<Site>
{
    private const string Leak = "A compartment leaks at a stand";

    /// <summary>A drill waits for the plan of its machine, beside the tests of other projects.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 120_000 };

    /// <summary>By keyboard from the empty room to two people in one drill, held, with a word of the assessor, advice, a message and a fault, and back to the start.</summary>
    [Fact]
    public async Task Room_DrillSetUpForTwo_IsWatchedAndSteered()
    {
        IPage page = await site.Open("/room");
        await Expect(page.GetByText("Nobody is here yet. Whoever opens")).ToBeVisibleAsync();
        await Clean(page, "empty");
        using IDisposable one = Comes("Okafor");
        using IDisposable two = Comes("Brandt");
        await Expect(page.Locator(".room-waiting")).ToContainTextAsync("Brandt");

        await page.GetByRole(AriaRole.Button, new() { Name = "Set up a drill" }).ClickAsync();
        ILocator setup = page.GetByRole(AriaRole.Dialog);
        await setup.GetByRole(AriaRole.Radio, new() { Name = Leak }).CheckAsync();
        await setup.GetByLabel("Seed").FillAsync("many");
        await setup.GetByRole(AriaRole.Button, new() { Name = "Set it up, held" }).ClickAsync();
        await Expect(setup.GetByRole(AriaRole.Alert)).ToContainTextAsync("whole numbers");
        await Clean(page, "setup");
        await setup.GetByLabel("Seed").FillAsync("4471");
        await setup.GetByRole(AriaRole.Button, new() { Name = "Set it up, held" }).ClickAsync();
        await Expect(page.Locator(".seat")).ToHaveCountAsync(2, new() { Timeout = 120_000 });
        await Expect(page.Locator(".seat").First).ToContainTextAsync("has not begun");
        await page.GetByRole(AriaRole.Button, new() { Name = "Let 2 begin" }).ClickAsync();
        await Expect(page.Locator(".deep-clock")).Not.ToHaveTextAsync("0:00", new() { Timeout = 30_000 });

        await page.Keyboard.PressAsync(" ");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "All are held: let go" })).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("2");
        await Expect(page.Locator(".deep-head h2")).ToHaveTextAsync("Brandt");
        await Expect(page.Locator(".deep-marks")).ToContainTextAsync("so far");
        await Expect(page.Locator(".deep-vessels svg")).ToBeVisibleAsync();
        await page.Locator(".deep-diagram summary").ClickAsync();
        await Expect(page.Locator(".deep-plate svg").First).ToBeVisibleAsync();
        await Expect(page.Locator(".deep-plate")).ToContainTextAsync("Supply header");
        await Expect(page.Locator(".deep-plate [role=switch]")).ToHaveCountAsync(0); // it is only looked at
        await Clean(page, "diagram");
        await page.Locator(".deep-views select").First.SelectOptionAsync("brake air");
        await Expect(page.Locator(".deep-plate")).Not.ToContainTextAsync("Supply header");
        await page.Locator(".deep-diagram summary").ClickAsync();

        ILocator seen = page.GetByRole(AriaRole.Group, new() { Name = "keeps every flame" });
        await seen.GetByRole(AriaRole.Button, new() { Name = "no go" }).ClickAsync();
        await Expect(seen.GetByRole(AriaRole.Button, new() { Name = "no go" })).ToHaveAttributeAsync("aria-pressed", "true");
        await page.Keyboard.PressAsync("n");
        await page.Keyboard.TypeAsync("Look at the ground first");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Expect(page.Locator(".deep-kept")).ToHaveTextAsync("Look at the ground first");
        await page.Keyboard.PressAsync("m");
        await page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Where are you?" }).ClickAsync();
        await page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "Say it" }).ClickAsync();
        await Expect(page.Locator(".deep-radio")).ToContainTextAsync("Where are you?");
        await page.Keyboard.PressAsync("b");
        await Clean(page, "deep");
        Assert.All(site.Room.Seats, s => Assert.True(s.Drill!.Session!.Held.HasFlag(HoldReason.All)));

        await page.GetByRole(AriaRole.Button, new() { Name = "Run on …" }).ClickAsync();
        ILocator run = page.GetByRole(AriaRole.Dialog);
        await run.GetByLabel("Until").SelectOptionAsync(new SelectOptionValue { Label = "a condition that you write" });
        await run.GetByRole(AriaRole.Textbox, new() { Name = "Condition" }).FillAsync("fuel is on the grund");
        await run.GetByRole(AriaRole.Button, new() { Name = "Run on" }).ClickAsync();
        await Expect(run.GetByRole(AriaRole.Alert)).ToContainTextAsync("fuel is on the ground");
        await run.GetByLabel("For at most").FillAsync("30");
        await run.GetByRole(AriaRole.Textbox, new() { Name = "Condition" }).FillAsync("fuel is on the ground");
        await run.GetByRole(AriaRole.Button, new() { Name = "Run on" }).ClickAsync();
        await Expect(page.GetByText("It came to be so at")).ToBeVisibleAsync(s_patience);

        await page.GetByRole(AriaRole.Button, new() { Name = "Go back …" }).ClickAsync();
        await page.GetByRole(AriaRole.Dialog).GetByRole(AriaRole.Button, new() { Name = "To the start" }).ClickAsync();
        await Expect(page.Locator(".deep-clock")).ToHaveTextAsync("0:00", new() { Timeout = 30_000 });
        await Expect(page.Locator(".room-done")).ToContainTextAsync("Brandt");
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await page.SetViewportSizeAsync(390, 844);
        await Clean(page, "390");
        await page.SetViewportSizeAsync(1920, 1080);
        await Clean(page, "1920");
    }

    private IDisposable Comes(string name)
    {
        Assert.Null(site.Room.Join(name, out Seat? seat, out _));
        return site.Room.Open(seat!);
    }

    private static async Task Clean(IPage page, string name)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), $"{name}: the page is wider than its window");
        await Site.Keep(page, "room-" + name);
    }
}
