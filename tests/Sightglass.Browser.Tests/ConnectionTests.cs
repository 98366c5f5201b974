using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.WalkDowns;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>What is typed is heard: before a page's connection stands, and while it is lost, nothing can be typed that nobody hears.</summary>
public sealed class ConnectionTests(Site site) : IClassFixture<Site>
{
    /// <summary>Script that keeps the page's connection, and closes the way to a new one on demand.</summary>
    private const string Line = "const Socket = WebSocket; window.WebSocket = class extends Socket { constructor(...a) { super(...a); window.line = this; } };";

    [Theory]
    [InlineData("/walk")]
    [InlineData("/machine")]
    [InlineData("/lesson?shows=fuel for a crew")]
    [InlineData("/bets/table?of=supply closed alone")]
    [InlineData("/papers?card=drain-water")]
    [InlineData("/notes")]
    public async Task Page_BeforeItsConnection_IsReadAndTakesNothing(string path)
    {
        IBrowserContext browser = await site.Phone(width: 1440, height: 900);
        (IPage page, TaskCompletionSource go) = await Held(browser, site.Address + path);
        await Expect(page.Locator("h1")).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Rules", Exact = true })).ToBeVisibleAsync();
        Assert.NotEqual(0, await page.Locator("main :is(input,textarea,select,button):disabled").CountAsync());
        Assert.Equal(0, await page.Locator("main :is(input,textarea,select,button):enabled").CountAsync());
        await Expect(page.GetByText("The page is being connected.")).ToBeVisibleAsync();
        await Site.Keep(page, "connecting-" + path.Split('/', '?')[1]);
        go.SetResult();
        await Expect(page.GetByText("The page is being connected.")).ToHaveCountAsync(0);
        Assert.NotEqual(0, await page.Locator("main :is(input,textarea,select,button):enabled").CountAsync());
        await browser.CloseAsync();
    }

    /// <summary>A link is followed when the connection was asked for and has not answered: the page it leads to stays, and listens.</summary>
    [Fact]
    public async Task Link_FollowedBeforeTheConnectionAnswers_LeadsWhereItSays()
    {
        IBrowserContext browser = await site.Phone(width: 1440, height: 900);
        IPage page = await browser.NewPageAsync();
        TaskCompletionSource asked = new(TaskCreationOptions.RunContinuationsAsynchronously), left = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await page.RouteWebSocketAsync(new Regex("/_blazor"), line =>
        {
            IWebSocketRoute server = line.ConnectToServer();
            Task after = Task.CompletedTask;
            int sent = 0, come = 0;
            line.OnMessage(frame =>
            {
                Pass(frame, server);
                if (++sent == 2)
                {
                    asked.TrySetResult(); // the first was the handshake
                }
            });
            server.OnMessage(frame =>
            {
                Task wait = ++come == 1 ? Task.CompletedTask : left.Task;
                after = after.ContinueWith(_ => wait, TaskScheduler.Default).Unwrap().ContinueWith(_ => Pass(frame, line), TaskScheduler.Default);
            });
        });
        await page.GotoAsync(site.Address + "/calculators", new() { Timeout = 90_000 });
        await asked.Task.WaitAsync(TimeSpan.FromSeconds(60));
        await page.GetByRole(AriaRole.Link, new() { Name = "Horn" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync("Horn · Sightglass");
        left.SetResult();
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        await Expect(page.GetByLabel("distance", new() { Exact = true })).ToHaveValueAsync("400 ft");
        await browser.CloseAsync();
    }

    private static void Pass(IWebSocketFrame frame, IWebSocketRoute to)
    {
        if (frame.Binary is { Length: > 0 } bytes)
        {
            to.Send(bytes);
        }
        else
        {
            to.Send(frame.Text!);
        }
    }

    /// <summary>A slow connection, an eager typist: what is accepted is what was typed.</summary>
    [Fact]
    public async Task Proposal_EditedOnASlowConnection_IsAcceptedAsEdited()
    {
        string folder = Directory.CreateTempSubdirectory("sightglass-slow-").FullName;
        string book = Path.Combine(folder, "heron");
        Directory.CreateDirectory(book);
        await File.WriteAllTextAsync(Path.Combine(book, "book.yaml"), WalkDownTests.Heron);
        WebApplication computer = WebHost.Build(new ServeRequest(book, 0) { DataFolder = Path.Combine(folder, "data") }, [])!;
        await computer.StartAsync();
        List<string> found = [];
        byte[] result = System.Text.Encoding.UTF8.GetBytes("""
            { "format": "sightglass walk-down 1", "book": "Heron", "edition": "", "road_number": null, "purpose": "all", "by": "Brandt", "made_at": "2026-11-26T08:00:00.000Z", "phone": "00000000-0000-4000-8000-000000000001",
              "entries": [ { "id": "00000000-0000-4000-8000-000000000002", "place": "rear", "item": "drain", "state": "seen", "label": "DRAIN 1", "opens_towards": "", "note": "", "photo": null, "marks": [], "voice": null, "revision": 1, "by": "Brandt", "at": "2026-11-26T08:00:00.000Z" } ] }
            """);
        WalkDownResult taken = WalkDownReader.Read(result, computer.Services.GetRequiredService<MachineRoom>().Shelf.Book, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        _ = computer.Services.GetRequiredService<WalkDownDesk>().Take(taken);

        IBrowserContext browser = await site.Phone(width: 1440, height: 900);
        (IPage page, TaskCompletionSource go) = await Held(browser, WebHost.Address(computer) + "/proposals");
        ILocator text = page.GetByLabel("What the book is to say");
        await Expect(text).ToBeDisabledAsync();
        Task typed = text.FillAsync("DRAIN, REAR");
        await Task.Delay(300);
        Assert.False(typed.IsCompleted);
        go.SetResult();
        await typed;
        await page.GetByRole(AriaRole.Button, new() { Name = "Accept" }).ClickAsync();
        await Expect(page.GetByText("is in the book")).ToBeVisibleAsync();
        Assert.Contains("DRAIN, REAR", await File.ReadAllTextAsync(Path.Combine(book, "book.yaml")), StringComparison.Ordinal);
        await browser.CloseAsync();
        await computer.StopAsync();
        await computer.DisposeAsync();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>Cut while a word is being typed: the field takes no more, and what stood in it is heard when the connection is back.</summary>
    [Fact]
    public async Task Question_CutWhileItIsTyped_IsHeardWhenTheConnectionIsBack()
    {
        IPage page = await site.Open("/notes", prepare: Line);
        ILocator question = page.GetByLabel("Question", new() { Exact = true });
        await page.GetByLabel("Who finds out").FillAsync("the shop");
        await question.FocusAsync();
        await page.Keyboard.TypeAsync("Cut in the middle?");
        // Offline as well: on a busy machine the page may have come to ask again and again instead of keeping a line.
        await page.Context.SetOfflineAsync(true);
        await page.EvaluateAsync("() => { const Made = WebSocket; window.before = window.line; window.again = () => { window.WebSocket = Made; }; window.WebSocket = class { constructor() { throw new Error('cut'); } }; window.line.close(); }");
        await Expect(question).ToBeDisabledAsync();
        await Expect(question).ToHaveValueAsync("Cut in the middle?");
        await Site.Keep(page, "connection-lost");
        await page.Context.SetOfflineAsync(false);
        await page.EvaluateAsync("() => window.again()");
        await Expect(question).ToBeEnabledAsync();
        await Expect(question).ToBeFocusedAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Write it down" }).First.ClickAsync();
        await Expect(page.Locator(".note-text").Filter(new() { HasTextRegex = new Regex("^Cut in the middle\\?$") })).ToBeVisibleAsync();
    }

    /// <summary>A page whose connection waits until it is let go.</summary>
    private static async Task<(IPage Page, TaskCompletionSource Go)> Held(IBrowserContext browser, string address)
    {
        TaskCompletionSource go = new(TaskCreationOptions.RunContinuationsAsynchronously);
        IPage page = await browser.NewPageAsync();
        await page.RouteAsync(new Regex("/_blazor/negotiate"), async route =>
        {
            await go.Task;
            await route.ContinueAsync();
        });
        await page.GotoAsync(address, new() { Timeout = 90_000 });
        return (page, go);
    }
}
