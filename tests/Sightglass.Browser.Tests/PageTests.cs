using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Sightglass.Web.Live;
using Sightglass.World.Records;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>Few journeys through both pages, by role and name.</summary>
public sealed class PageTests(Site site) : IClassFixture<Site>
{
    [Fact]
    public async Task Walk_ArrowKeys_GoOnwardAndBack()
    {
        IPage page = await site.Open("/walk");
        ILocator progress = page.GetByText("stop 1 of");
        await Expect(progress).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.GetByText("stop 2 of")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(progress).ToBeVisibleAsync();
        string first = await page.Locator("#item-name").InnerTextAsync();
        await page.Keyboard.PressAsync("ArrowDown");
        await Expect(page.Locator("#item-name")).Not.ToHaveTextAsync(first);
        await page.Keyboard.PressAsync("/");
        await page.GetByLabel("Place or item").FillAsync("fuel panel, right");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("Seen from: Fuel panel, right")).ToBeVisibleAsync();
        await Site.Keep(page, "walk-keys");
    }

    [Fact]
    public async Task Walk_ItemOfTheStripClicked_IsReadBelow()
    {
        IPage page = await site.Open("/walk?train=this machine&at=fuel panel, right");
        await page.Locator("#strip-frame").GetByRole(AriaRole.Button, new() { Name = "Sight glass, forward", Exact = true }).Locator(".hit").Last.ClickAsync();
        await Expect(page.Locator("#item-name")).ToHaveTextAsync("Sight glass, forward");
        await page.Mouse.MoveAsync(10, 10);
        Assert.True(await page.Locator(".also .link").CountAsync() > 0); // what has no room for its name on the strip
        Assert.True(await page.EvaluateAsync<bool>("() => { const y = document.querySelector('.you').getBoundingClientRect(); return y.left > 0 && y.right < innerWidth }"));
        await Site.Keep(page, "walk-item");
    }

    /// <summary>A train is chosen, a car gone to, and the walk goes on along it.</summary>
    [Fact]
    public async Task Walk_AlongATrain_GoesToACarAndOnward()
    {
        IPage page = await site.Open("/walk");
        ILocator trains = page.GetByRole(AriaRole.Group, new() { Name = "Train" });
        await trains.GetByRole(AriaRole.Button, new() { Name = "Night mail" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("train=night"));
        ILocator vehicles = page.GetByRole(AriaRole.Group, new() { Name = "Vehicle" });
        await vehicles.GetByRole(AriaRole.Button, new() { Name = "Car 3" }).ClickAsync();
        await Expect(page.GetByText("Seen from: A coupler of car 3")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.GetByText("Seen from: A end, right of car 3")).ToBeVisibleAsync();
        await Expect(vehicles.GetByRole(AriaRole.Button, new() { Name = "Car 3" })).ToHaveAttributeAsync("aria-pressed", "true");
        Assert.True(await page.EvaluateAsync<bool>("() => { const y = document.querySelector('.you').getBoundingClientRect(); return y.left > 0 && y.right < innerWidth }"));
        await vehicles.GetByRole(AriaRole.Button, new() { Name = "Car 3" }).ClickAsync();
        await Expect(page.GetByText("Seen from: A coupler of car 3")).ToBeVisibleAsync();
        await Site.Keep(page, "walk-train");
        await trains.GetByRole(AriaRole.Button, new() { Name = "The machine alone" }).ClickAsync();
        await Expect(vehicles).ToHaveCountAsync(0);
        await Expect(page.GetByText("stop 1 of")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Machine_ValveTurnedByKeyboard_LevelsPartInBothBrowsers()
    {
        IPage one = await site.Open("/machine?system=fuel");
        IPage two = await site.Open("/machine?system=fuel");
        await Begin(one, "4101", "idle, nothing wrong");
        ILocator valve = one.GetByRole(AriaRole.Switch, new() { Name = "aft supply valve" });
        ILocator same = two.GetByRole(AriaRole.Switch, new() { Name = "aft supply valve" });
        await Expect(same).ToHaveAttributeAsync("aria-checked", "true");
        await valve.FocusAsync();
        await one.Keyboard.PressAsync("Enter");
        await Expect(valve).ToHaveAttributeAsync("aria-checked", "false");
        await Expect(same).ToHaveAttributeAsync("aria-checked", "false");
        await Expect(two.GetByRole(AriaRole.List, new() { Name = "What happened" }).GetByText("Instructor puts aft supply valve to closed.")).ToBeVisibleAsync();
        string before = await two.Locator("#d-lt-aft-compartment").TextContentAsync() ?? "";
        await two.GetByRole(AriaRole.Button, new() { Name = "×60" }).ClickAsync();
        await Expect(one.Locator("#d-lt-aft-compartment")).Not.ToHaveTextAsync(before);
        await two.GetByRole(AriaRole.Button, new() { Name = "Hold" }).ClickAsync();
        await Expect(one.GetByRole(AriaRole.Button, new() { Name = "Hold" })).ToHaveAttributeAsync("aria-pressed", "true");
        await SameText(one, two, "#clock");
        Assert.Equal(await one.Locator("#diagram").InnerHTMLAsync(), await two.Locator("#diagram").InnerHTMLAsync());
    }

    [Fact]
    public async Task Rules_RowFollowed_IsToldInFull()
    {
        IPage page = await site.Open("/walk");
        await page.GetByRole(AriaRole.Link, new() { Name = "Rules" }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "229.59(a)" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Complementary, new() { Name = "The row" })).ToContainTextAsync("After the pressure has been reduced to 60 % of the greatest pressure.");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "229.59(a)" })).ToHaveAttributeAsync("aria-current", "true");
        await Expect(page.GetByText("Local rules, the maker's manual and qualified people decide.")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Machine_TruthOff_NoTruthInThePage()
    {
        IPage page = await site.Open("/machine?system=fuel");
        await Begin(page, "4101", "leaking compartment");
        await page.GetByRole(AriaRole.Button, new() { Name = "×60" }).ClickAsync();
        await Expect(page.Locator(".ev .h").First).ToBeVisibleAsync(new() { Timeout = 20000 });
        await page.GetByRole(AriaRole.Switch, new() { Name = "Truth" }).ClickAsync();
        await Expect(page.Locator(".ev .h")).ToHaveCountAsync(0);
        await Expect(page.Locator("#diagram .tr:not(.off)")).ToHaveCountAsync(0);
        await Expect(page.Locator("#g0 .c-truth")).ToHaveCountAsync(0);
        await Site.Keep(page, "machine-without-truth");
        await page.GetByRole(AriaRole.Switch, new() { Name = "Truth" }).ClickAsync();
        await Expect(page.Locator("#diagram .tr:not(.off)")).Not.ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Hold" }).ClickAsync();
        await Site.Keep(page, "machine");
    }

    /// <summary>The brakes of a train are set in the cab, and seen on a car, along the train and folded.</summary>
    [Fact]
    public async Task Machine_OfATrain_SystemAndVehicleChosen_EmergencySeenAlongIt()
    {
        IPage page = await site.Open("/machine");
        await Begin(page, "4101", "night mail, charged");
        await page.GetByRole(AriaRole.Button, new() { Name = "Main reservoir air", Exact = true }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Main reservoir air, alive");
        await page.GetByRole(AriaRole.Button, new() { Name = "Brake air", Exact = true }).ClickAsync();
        ILocator handle = page.Locator("#diagram").GetByRole(AriaRole.Button, new() { Name = "automatic brake handle" });
        await handle.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "emergency", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "×1", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Car 3", Exact = true }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("vehicle=car"));
        await Expect(page.Locator("[id='d-lt-a-truck-cylinders-of-car-3']")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^[4-9][0-9]"), new() { Timeout = 30000 });
        await Expect(page.Locator("#along .c-curve")).Not.ToHaveCountAsync(1, new() { Timeout = 30000 });
        ILocator hold = page.GetByRole(AriaRole.Button, new() { Name = "Hold" });
        await hold.ClickAsync();
        await Expect(hold).ToHaveAttributeAsync("aria-pressed", "true");
        await Site.Keep(page, "machine-train");
        await page.GetByRole(AriaRole.Button, new() { Name = "The whole train" }).ClickAsync();
        await Expect(page.Locator("#diagram").GetByText("cars 2 to 5, 4 alike")).ToBeVisibleAsync();
    }

    /// <summary>Hoses crossed by the instructor: both lines show it at the coupling, to who sees truth; put right, the picture is as before.</summary>
    [Fact]
    public async Task Machine_HosesCrossed_DrawnAtTheCouplingAsTruth()
    {
        IPage page = await site.Open("/machine");
        await Begin(page, "4101", "local train, charged");
        await page.GetByRole(AriaRole.Button, new() { Name = "Brake air", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Car 1", Exact = true }).ClickAsync();
        ILocator cross = page.GetByRole(AriaRole.Img, new() { Name = "brake pipe and main reservoir pipe hoses at the rear are crossed" });
        await Expect(cross).ToHaveCountAsync(0);
        await page.Locator("#fault-what").SelectOptionAsync("Hose pair: crossed");
        await page.Locator(".drawer select").Nth(1).SelectOptionAsync("Coupling of 4101 and car 1: brake pipe and main reservoir pipe hoses");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put in now" }).ClickAsync();
        await Expect(cross).ToHaveCountAsync(1);
        await Expect(page.Locator("#diagram").GetByRole(AriaRole.Button, new() { Name = "main reservoir pipe coupling at the rear" })).ToHaveCountAsync(1);
        await Expect(page.Locator("#fault-what")).ToHaveValueAsync("hose pair|crossed"); // the drawer stays as it was left
        await Site.Keep(page, "machine-crossed");
        await page.GetByRole(AriaRole.Switch, new() { Name = "Truth" }).ClickAsync();
        await Expect(cross).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Switch, new() { Name = "Truth" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "The whole train" }).ClickAsync();
        await Expect(cross).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Button, new() { Name = "Take out: crossed, coupling of 4101 and car 1: brake pipe and main reservoir pipe hoses" }).ClickAsync();
        await Expect(cross).ToHaveCountAsync(0);
    }

    /// <summary>Another purpose, more groups, a depth: planned anew each time, by keyboard; the address holds it, and another browser opens the same.</summary>
    [Fact]
    public async Task Lesson_AskedAnew_PlannedAnewAndHeldByItsAddress()
    {
        IPage page = await site.Open("/lesson");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Before departure");
        await page.GetByLabel("Shows").SelectOptionAsync("fuel for a crew");
        await Expect(page.Locator("h1")).ToHaveTextAsync("Fuel for a crew");
        await Expect(page.GetByLabel("Audience")).ToHaveValueAsync("conductor");
        await page.GetByLabel("Stations").FillAsync("3");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.GetByRole(AriaRole.Heading, new() { NameRegex = new("^Station 3") })).ToBeVisibleAsync();
        await page.GetByLabel("Minutes").FillAsync("20");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".lesson>.lead")).ToContainTextAsync("more than there are");
        await Expect(page.Locator(".plan-number")).ToHaveCountAsync(5);
        await Site.Keep(page, "lesson");
        IPage other = await site.Open(new Uri(page.Url).PathAndQuery);
        await Expect(other.Locator(".lesson>.lead")).ToHaveTextAsync(await page.Locator(".lesson>.lead").InnerTextAsync());
    }

    /// <summary>A frame in a picture leads to its item, by keyboard too, and the item that is read is framed.</summary>
    [Fact]
    public async Task Walk_FrameInAPicture_LeadsToItsItem()
    {
        IPage page = await site.Open("/walk?at=centre return valve");
        await Expect(page.GetByAltText("The fuel panel on the right side.", new() { Exact = false })).ToBeVisibleAsync();
        await Expect(page.Locator(".photo-mark[aria-current]")).ToHaveAttributeAsync("title", "Centre return valve");
        await page.GetByRole(AriaRole.Button, new() { Name = "Aft supply valve" }).Last.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#item-name")).ToHaveTextAsync("Supply, aft");
        await Expect(page.Locator(".photo-mark[aria-current]")).ToHaveAttributeAsync("title", "Aft supply valve");
        Assert.True(await page.Locator(".photo img").EvaluateAsync<bool>("i => i.complete && i.naturalWidth > 0"));
        await Site.Keep(page, "walk-picture");
    }

    /// <summary>A lesson is kept, its words are changed by keyboard, and both are there for whoever opens it next; then it is forgotten.</summary>
    [Fact]
    public async Task Lesson_KeptAndEdited_StaysSo()
    {
        IPage page = await site.Open("/lesson?shows=fuel for a crew");
        await page.GetByLabel("Keep this as").FillAsync("Monday");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await Expect(page.GetByLabel("Kept")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^[0-9a-f-]{36}$"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Edit the words" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.Locator(".edit-line textarea").First.FillAsync("This is where you look first.");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".edit-line.changed")).ToHaveCountAsync(1);
        await page.GetByRole(AriaRole.Checkbox).Nth(1).PressAsync(" ");
        await Expect(page.Locator(".edit-item.passed")).ToHaveCountAsync(1);
        await Site.Keep(page, "lesson-words");
        IPage other = await site.Open(new Uri(page.Url).PathAndQuery);
        await Expect(other.Locator(".lesson")).ToContainTextAsync("This is where you look first.");
        await Expect(other.Locator(".misfit")).ToHaveCountAsync(0);
        await other.GetByRole(AriaRole.Button, new() { Name = "Forget it" }).ClickAsync();
        await other.GetByRole(AriaRole.Button, new() { Name = "Really forget it" }).ClickAsync();
        await Expect(other.GetByLabel("Kept")).ToHaveValueAsync("");
        await Expect(other.Locator(".lesson")).Not.ToContainTextAsync("This is where you look first.");
    }

    /// <summary>A question is asked, answered and proposed for the book; a defect is found and mended. What lacks something is told where it is written.</summary>
    [Fact]
    public async Task Notes_FromTheQuestionToTheProposal()
    {
        IPage page = await site.Open("/notes");
        await page.GetByLabel("Question", new() { Exact = true }).FillAsync("Which way is it open?");
        await page.GetByLabel("About").FillAsync("horn cutout cok");
        await page.GetByLabel("Who finds out").FillAsync("the shop");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Did you mean \"horn cutout cock\"");
        await page.GetByLabel("About").FillAsync("horn cutout cock");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).First.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Answer it" }).ClickAsync();
        await page.GetByLabel("What was found").FillAsync("In line with the pipe.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep the answer" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "operate" }).ClickAsync();
        await Expect(page.GetByText("Proposed for the book.")).ToBeVisibleAsync();
        await page.GetByLabel("What does not work").FillAsync("The right glass is cracked.");
        await page.GetByLabel("Found by").FillAsync("day shift");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).Nth(1).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Mended" }).ClickAsync();
        await page.GetByLabel("By whom").FillAsync("the shop");
        await page.GetByRole(AriaRole.Button, new() { Name = "It is mended" }).ClickAsync();
        await Expect(page.GetByText("Mended by the shop")).ToBeVisibleAsync();
    }

    /// <summary>A question on the wall, one answer from a phone, run, and told on both.</summary>
    [Fact]
    public async Task Bet_AnsweredFromAPhone_RunAndTold()
    {
        IPage wall = await site.Open("/bets/table?of=supply%20closed%20alone", 1600, 1000);
        IPage phone = await site.Open("/answer", 390, 844);
        await Expect(phone.Locator("h1")).ToHaveTextAsync(await wall.Locator("h1").InnerTextAsync());
        await phone.GetByRole(AriaRole.Button).Nth(0).FocusAsync();
        await phone.Keyboard.PressAsync("Enter");
        await Expect(phone.Locator("#told")).ToContainTextAsync("You say A");
        await wall.GetByRole(AriaRole.Button, new() { Name = "One more for B" }).FocusAsync();
        await wall.Keyboard.PressAsync("Enter");
        await wall.Keyboard.PressAsync("Enter");
        await Expect(wall.Locator(".hands b")).ToHaveTextAsync(["1", "2", "0"]);
        await wall.GetByRole(AriaRole.Button, new() { Name = "Run it" }).ClickAsync();
        await Expect(phone.Locator("#told")).ToContainTextAsync("It is running");
        await wall.GetByLabel("Moment shown").FocusAsync();
        await wall.Keyboard.PressAsync("End");
        await Expect(wall.Locator(".came")).ToContainTextAsync("came true");
        await Expect(wall.Locator("#bet-clock")).ToHaveTextAsync("6:00:00");
        await Expect(phone.Locator("#told")).ToContainTextAsync("C came true; you said A.");
        await Site.Keep(wall, "bet");
    }

    /// <summary>What was done in a browser, done again from its record without one: bit for bit the same machine.</summary>
    [Fact]
    public async Task Machine_OperatedInABrowser_SameHashDoneAgainWithoutPages()
    {
        IPage page = await site.Open("/machine?system=fuel");
        await Begin(page, "4107", "idle, nothing wrong");
        await page.GetByRole(AriaRole.Button, new() { Name = "×60" }).ClickAsync();
        await page.GetByRole(AriaRole.Switch, new() { Name = "aft supply valve" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Put in now" }).ClickAsync();
        await Expect(page.Locator("#clock")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^0:0[2-9]"), new() { Timeout = 60000 });
        await Begin(page, "4101", "idle, nothing wrong");

        SessionRecord record = Directory.GetFiles(site.Records, "run-*.jsonl").Select(f => SessionRecord.Read(File.ReadAllBytes(f), out _)!)
            .Single(r => r.Header.Start.RoadNumber == "4107");
        Assert.Equal(2, record.Lines.Count(l => l.Do is not null));
        BookShelf shelf = BookShelf.Open(Site.Folder("curlew"), [])!;
        Assert.Equal(record.Hash, $"{Replay.Hash(shelf.PlanOf("4107"), record):x16}");
    }

    [Theory]
    [InlineData("/walk?at=fuel panel, right", ColorScheme.Dark, 1440, 900)]
    [InlineData("/walk?at=rear coupler", ColorScheme.Light, 390, 844)]
    [InlineData("/walk?at=fuel panel, right", ColorScheme.Light, 1920, 1080)]
    [InlineData("/walk?train=double-headed express&at=rear coupler of unit 2", ColorScheme.Dark, 390, 844)]
    [InlineData("/machine", ColorScheme.Dark, 1440, 900)]
    [InlineData("/machine", ColorScheme.Light, 390, 844)]
    [InlineData("/machine?system=brake air&vehicle=the whole train", ColorScheme.Light, 1440, 900)]
    [InlineData("/machine?system=main reservoir air&vehicle=this machine", ColorScheme.Light, 390, 844)]
    [InlineData("/lesson", ColorScheme.Light, 1440, 900)]
    [InlineData("/lesson?shows=fuel&stations=3", ColorScheme.Dark, 390, 844)]
    [InlineData("/papers", ColorScheme.Light, 1440, 900)]
    [InlineData("/papers?card=drain-water", ColorScheme.Dark, 390, 844)]
    [InlineData("/bets", ColorScheme.Light, 1440, 900)]
    [InlineData("/bets/table?of=both valves stay open", ColorScheme.Dark, 1920, 1080)]
    [InlineData("/bets/table?of=one cock in the train", ColorScheme.Light, 390, 844)]
    [InlineData("/answer", ColorScheme.Dark, 390, 844)]
    [InlineData("/notes", ColorScheme.Light, 1440, 900)]
    [InlineData("/notes?about=horn", ColorScheme.Dark, 390, 844)]
    [InlineData("/rules?show=229.59(a)", ColorScheme.Light, 1440, 1000)]
    [InlineData("/rules", ColorScheme.Dark, 390, 844)]
    public async Task Pages_LookedAtByAxe_NothingFound(string path, ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open(path, width, height, scheme);
        List<string> said = [];
        page.Console += (_, m) => { if (m.Type == "error") { said.Add(m.Text); } };
        if (path == "/machine")
        {
            await Begin(page, "4101", "leaking compartment");
            await page.GetByRole(AriaRole.Button, new() { Name = "×60" }).ClickAsync();
            await Expect(page.Locator("#clock")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^0:0[4-9]"), new() { Timeout = 40000 });
            await page.GetByRole(AriaRole.Button, new() { Name = "Hold" }).ClickAsync();
            await page.WaitForTimeoutAsync(300);
        }

        if (path.StartsWith("/machine?", StringComparison.Ordinal))
        {
            await Begin(page, "4101", "night mail, charged");
            await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Vehicle" })).ToBeVisibleAsync();
        }

        await Site.Keep(page, $"{path[1..].Split('?')[0]}{(path.Contains("vehicle=", StringComparison.Ordinal) ? "-" + path.Split('=')[^1].Replace(' ', '-') : "")}-{scheme.ToString().ToLowerInvariant()}-{width}");
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.Empty(said);
    }

    // WCAG 2.2, 2.4.2: a page has a title; also while its connection is made, and after going on to another page.
    [Fact]
    public async Task Name_ArrivingAndGoingOn_AlwaysThere()
    {
        IPage page = await site.Open("/walk", prepare: "new MutationObserver(() => { window.names ??= []; if (document.head && names.at(-1) !== document.title) names.push(document.title); }).observe(document, { childList: true, subtree: true, characterData: true });");
        await Expect(page).ToHaveTitleAsync("Walk · Sightglass");
        await page.GetByRole(AriaRole.Link, new() { Name = "Rules" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync("Rules · Sightglass");
        await page.GetByRole(AriaRole.Link, new() { Name = "Machine" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync("Machine · Sightglass");
        string[] names = await page.EvaluateAsync<string[]>("window.names");
        Assert.Equal(["Walk · Sightglass", "Rules · Sightglass", "Machine · Sightglass"], names.SkipWhile(n => n.Length == 0));
    }

    // The last picture reaches each browser in its own time.
    private static async Task SameText(IPage one, IPage two, string place)
    {
        for (int tries = 0; tries < 50 && await one.Locator(place).InnerTextAsync() != await two.Locator(place).InnerTextAsync(); tries++)
        {
            await Task.Delay(100);
        }

        Assert.Equal(await one.Locator(place).InnerTextAsync(), await two.Locator(place).InnerTextAsync());
    }

    private static async Task Begin(IPage page, string road, string situation)
    {
        // The same situation again looks the same: only a new drawing says that it has begun.
        await page.EvaluateAsync("document.querySelector('#diagram svg').dataset.before = 'yes'");
        await page.Keyboard.PressAsync("s");
        ILocator dialog = page.GetByRole(AriaRole.Dialog);
        await dialog.GetByLabel("Road number").SelectOptionAsync(road);
        await dialog.GetByLabel("Situation").SelectOptionAsync(situation);
        await dialog.GetByRole(AriaRole.Button, new() { Name = "Begin, held" }).ClickAsync();
        await Expect(page.Locator("#diagram svg[data-before]")).ToHaveCountAsync(0);
        await Expect(page.Locator("#diagram svg")).ToHaveCountAsync(1);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = $"{road}: {situation}, case 0" })).ToBeVisibleAsync();
        await Expect(page.Locator("#clock")).ToHaveTextAsync("0:00:00");
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
    }
}
