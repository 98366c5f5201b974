using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Room;
using Sightglass.World;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A trainee at an old laptop: comes in, works a drill to its end, and sees what came of it.</summary>
public sealed class DrillTests(Site site) : IClassFixture<Site>
{
    private const string Dark = "a headlight is dark";

    /// <summary>Script that keeps the page's line, and while the network is far lets no other one stand.</summary>
    private const string Line = "const Socket = WebSocket; window.WebSocket = class extends Socket { constructor(...a) { super(...a); window.line = this; if (window.far) this.close(); } };";

    /// <summary>A drill waits for the plan of its machine, beside the tests of other projects.</summary>
    private static readonly LocatorAssertionsToBeVisibleOptions s_patience = new() { Timeout = 120_000 };

    /// <summary>Steps and doors that nobody gets by: the page knows of nothing before somebody stands there, then says what was found out.</summary>
    [Theory]
    [InlineData("K. Kestrel", 1440, 900, ColorScheme.Light)]
    [InlineData("L. Larch", 390, 844, ColorScheme.Dark)]
    public async Task Drill_NobodyGetsOut_IsFoundOutAtTheDoor(string name, int width, int height, ColorScheme scheme)
    {
        IPage page = await ComeIn(name, width, height, scheme, []);
        Seat seat = site.Room.Seats.Single(s => s.Name == name);
        Assert.Null(site.Room.Begin(Dark, 1, Case(breakerAlone: true), [seat], alone: true));
        await Expect(page.Locator("#go")).ToBeVisibleAsync(s_patience);
        await page.Locator("#go").PressAsync("Enter");
        await Expect(page.Locator("#where")).ToContainTextAsync("Cab");
        foreach (string shut in new[] { "cab steps and grab irons", "emergency window exit", "machinery door, right", "machinery door, left", "rear ladders" })
        {
            Assert.Null(seat.Drill!.Session!.Do(new WorldAction.PutIn(shut, shut.Contains("door", StringComparison.Ordinal) ? "stuck" : "cannot be used", System.Collections.Immutable.ImmutableSortedDictionary<string, double>.Empty)));
        }

        await page.Locator("#far-place").SelectOptionAsync("cab steps, right");
        await page.Locator("#far-go").PressAsync("Enter");
        await Expect(page.Locator("#where")).ToContainTextAsync("On the way to cab steps, right");
        await page.Locator("#pace-120").PressAsync("Enter");
        await Expect(page.Locator(".signs")).ToContainTextAsync("Nobody gets by: cab steps and grab irons", new() { Timeout = 120_000 });
        await Expect(page.Locator(".signs")).ToContainTextAsync("There is no way to cab steps, right.", new() { Timeout = 120_000 });
        await page.Locator("#pace-2").PressAsync("Enter");
        await page.Locator("#far-go").PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("there is no way for you");
        await Clean(page, $"shut-{width}");
    }

    /// <summary>By keyboard alone: in, told what it is about, walk, read, operate, report, done, passed; nothing of what the places do not show came over the wire.</summary>
    [Fact]
    public async Task Drill_WorkedByKeyboard_IsPassedAndTheWireHeldNoMore()
    {
        List<string> wire = [];
        IPage page = await ComeIn("A. Alder", 1440, 900, ColorScheme.Light, wire);
        Seat seat = site.Room.Seats.Single(s => s.Name == "A. Alder");
        Assert.Null(site.Room.Begin(Dark, 1, Case(breakerAlone: true), [seat], alone: true));
        await Expect(page.Locator("#go")).ToBeVisibleAsync(s_patience);
        await Clean(page, "brief");
        await page.Locator("#go").PressAsync("Enter");
        await Expect(page.Locator("#where")).ToContainTextAsync("Cab");
        await Clean(page, "cab");
        int seen = wire.Count;

        string place = Item("headlight breaker").Places[0];
        await page.Locator("#far-place").SelectOptionAsync(place);
        await page.Locator("#far-go").PressAsync("Enter");
        await Expect(page.Locator("#where")).ToContainTextAsync("On the way");
        await page.Locator("#pace-120").PressAsync("Enter");
        await Expect(page.Locator(".ways button").First).ToBeVisibleAsync(s_patience);
        await page.Locator("#pace-2").PressAsync("Enter");
        ILocator breaker = page.GetByRole(AriaRole.Group, new() { Name = "Headlight breaker" });
        await breaker.GetByRole(AriaRole.Button, new() { Name = "on", Exact = true }).PressAsync("Enter");
        await Expect(breaker.GetByRole(AriaRole.Button, new() { Name = "on", Exact = true })).ToHaveAttributeAsync("aria-pressed", "true", new() { Timeout = 30_000 });
        await page.Keyboard.PressAsync("n");
        await page.Keyboard.TypeAsync("breaker was off");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#notes")).ToContainTextAsync("breaker was off");
        await page.Locator("#finding").SelectOptionAsync("it is lit");
        await page.Locator("#report-send").PressAsync("Enter");
        await Expect(page.Locator("#said")).ToContainTextAsync("it is lit", new() { Timeout = 30_000 });
        await page.Locator("#tell-whom").SelectOptionAsync("mechanical desk");
        await page.Locator("#tell-text").FillAsync("the headlight is lit");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#said")).ToContainTextAsync("the headlight is lit", new() { Timeout = 30_000 });
        string[] whole = [.. wire.Skip(seen)];
        await page.Locator("#done").PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Passed.", new() { Timeout = 60_000 });
        await Clean(page, "sheet");

        // From the cab to the breakers, and there: no name or fault of what stands elsewhere.
        Plant.Plans.Plan plan = seat.Drill!.Drill!.Plan;
        string[] here = ["cab", place];
        string sent = string.Concat(whole);
        string[] strangers = [.. plan.Book.Items.Values.Where(i => i.Places.Length > 0 && !i.Places.Intersect(here).Any() && !plan.Book.Places.Keys.Any(p => p.Contains(i.Name, StringComparison.Ordinal)) && !plan.Book.Systems.ContainsKey(i.Name)).Select(i => i.Name)];
        Assert.True(strangers.Length > 150, $"{strangers.Length}");
        Assert.DoesNotContain(strangers, s => sent.Contains($"\"{s}\\\"", StringComparison.OrdinalIgnoreCase) || sent.Contains($">{s}<", StringComparison.OrdinalIgnoreCase));
        foreach (string hidden in new[] { "burnt out", "shorted", "does not close", "truth" })
        {
            Assert.DoesNotContain(whole, w => w.Contains(hidden, StringComparison.OrdinalIgnoreCase));
        }
    }

    /// <summary>By fingers on a phone: what is not theirs works when they insist, is noted, and the drill is not passed for it.</summary>
    [Fact]
    public async Task Drill_UnauthorisedActByTouch_WorksAndFails()
    {
        IPage page = await ComeIn("B. Birch", 390, 844, ColorScheme.Dark);
        Seat seat = site.Room.Seats.Single(s => s.Name == "B. Birch");
        string drill = "a compartment leaks at a stand";
        Assert.Null(site.Room.Begin(drill, 1, 2, [seat], alone: true));
        await page.Locator("#go").TapAsync(new() { Timeout = 120_000 });
        BoundDrill bound = seat.Drill!.Drill!;
        string role = bound.Situation.People[seat.Person].Role;
        Item item = bound.Plan.Book.Items.Values.First(i => i.Authority is { Who.IsEmpty: false } a && !a.Who.Contains(role) && i.Positions.Length == 2 && bound.Plan.Items.TryGetValue(i.Name, out var p) && p.Position is not null && i.Vehicle.IsTheMachine);
        await page.Locator("#far-place").SelectOptionAsync(item.Places[0]);
        await page.Locator("#far-go").TapAsync();
        await page.Locator("#pace-120").TapAsync();
        ILocator group = page.GetByRole(AriaRole.Group, new() { Name = char.ToUpperInvariant(item.Name[0]) + item.Name[1..], Exact = true });
        await Expect(group).ToBeVisibleAsync(s_patience);
        await page.Locator("#pace-2").TapAsync();
        ILocator other = group.Locator("button[aria-pressed=false]");
        string id = (await other.GetAttributeAsync("id"))!;
        await other.TapAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("it will be noted");
        await Clean(page, "doubt");
        await page.Locator("#doubt-do").TapAsync();
        await Expect(page.Locator("#" + id)).ToHaveAttributeAsync("aria-pressed", "true", new() { Timeout = 60_000 });
        await page.Locator("#done").TapAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Not passed.", new() { Timeout = 120_000 });
        await Expect(page.Locator(".marks .broken").First).ToBeVisibleAsync();
        await Expect(page.Locator(".marks")).ToContainTextAsync(item.Name);
        await Clean(page, "failed");
    }

    /// <summary>A closed lid loses nothing: the clock stands, and the page is back at the same second with its notes; what the instructor holds stands.</summary>
    [Fact]
    public async Task Drill_ConnectionLostAndHeld_IsBackAtTheSameSecond()
    {
        IPage page = await ComeIn("C. Cedar", 1440, 900, ColorScheme.Light);
        Seat seat = site.Room.Seats.Single(s => s.Name == "C. Cedar");
        Assert.Null(site.Room.Begin(Dark, 1, 5, [seat]));
        DrillSession session = seat.Drill!.Session!;
        await Expect(page.GetByText("The instructor begins it.")).ToBeVisibleAsync(s_patience);
        session.Release(HoldReason.Brief);
        await Expect(page.Locator("#where")).ToBeVisibleAsync();
        await page.Locator("#note-text").FillAsync("nothing heard");
        await page.Locator("#note-send").ClickAsync();
        await Expect(page.Locator("#notes")).ToContainTextAsync("nothing heard");

        await page.EvaluateAsync("() => { window.far = true; window.line.close(); }");
        await Expect(page.Locator("#lost")).ToBeVisibleAsync(s_patience);
        await Until(() => session.Held.HasFlag(HoldReason.Lost));
        SimTime at = session.Current.Now;
        await Task.Delay(500, TestContext.Current.CancellationToken);
        Assert.Equal(at, session.Current.Now);
        session.Hold(HoldReason.One);
        await page.EvaluateAsync("() => { window.far = false; }");
        await Expect(page.Locator("#lost")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator("#notes")).ToContainTextAsync("nothing heard");
        Assert.Equal(at, session.Current.Now); // the instructor still holds it
        await Expect(page.Locator(".stands")).ToContainTextAsync("Held");
        await page.Locator("#note-send").FocusAsync();
        session.Release(HoldReason.One);
        await Expect(page.Locator(".stands")).ToHaveCountAsync(0);
        Assert.Equal("note-send", await page.EvaluateAsync<string>("document.activeElement.id")); // what is focused stays so
        await page.Locator("#stop").ClickAsync();
        await Expect(page.Locator(".stands")).ToContainTextAsync("Stopped");
        Assert.True(session.Held.HasFlag(HoldReason.Stop));
        Assert.Null(site.Room.End(seat.Drill!));
        await Expect(page.Locator("h1")).ToContainTextAsync("ended before its time");
    }

    private static async Task Until(Func<bool> isSo)
    {
        for (int i = 0; i < 600 && !isSo(); i++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        Assert.True(isSo());
    }

    private async Task<IPage> ComeIn(string name, int width, int height, ColorScheme scheme, List<string>? wire = null)
    {
        IBrowserContext context = await site.Phone(scheme, width, height);
        IPage page = await context.NewPageAsync();
        await page.AddInitScriptAsync(Line);
        if (wire is not null)
        {
            page.WebSocket += (_, line) => line.FrameReceived += (_, frame) => wire.Add(frame.Text ?? "");
        }

        await page.GotoAsync(site.Address + "/drill", new() { Timeout = 90_000 });
        await page.Locator("#name").FillAsync(name);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("h1")).ToHaveTextAsync(name, new() { Timeout = 60_000 });
        return page;
    }

    /// <summary>A case in which the breaker alone is off, so that it brings the light back, or one in which it does not.</summary>
    private ulong Case(bool breakerAlone)
    {
        DiagnosticList found = [];
        ClassBook book = site.Shelf.Book;
        DrillVariants variants = new(site.Shelf.Now.Fleet, book.Drills[Dark]);
        for (ulong number = 0; number < 60; number++)
        {
            BoundDrill drill = variants.For(new(1, number), found)!;
            using DrillSession session = DrillSession.Begin(drill, DrillReplay.StartOf(drill, 1, number), TimeProvider.System, null, found)!;
            session.Forward(SimTime.FromSeconds(2));
            Assert.Null(session.Do(new WorldAction.Operate(-1, "headlight breaker", "on")));
            session.Forward(SimTime.FromSeconds(20));
            if (session.Ask(w => w.Value(drill.Objectives[0]) >= 0) == breakerAlone)
            {
                return number;
            }
        }

        throw new InvalidOperationException("no such case");
    }

    private Item Item(string name) => site.Shelf.Book.Items[name];

    private static async Task Clean(IPage page, string name)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, name + ": " + string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), name + ": the page is wider than its window");
        await Site.Keep(page, $"drill-{name}-{page.ViewportSize!.Width}");
    }
}
