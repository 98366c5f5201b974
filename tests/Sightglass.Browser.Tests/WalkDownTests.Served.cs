using System.Text.RegularExpressions;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Storage.WalkDowns;
using Sightglass.Training.WalkDowns;
using Sightglass.Web.Host;
using Sightglass.Web.Share;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

public sealed partial class WalkDownTests
{
    internal const string Heron = """
        book: Heron
        places:
          yard: { x: 1 m, y: 2.4 m, z: 0 m, text: Beside the cab. }
          rear: { x: 9 m, y: 2.4 m, z: 0 m }
        roles: { mechanical: {} }
        items:
          horn: { places: [yard], for: Warns., normal: Loud. }   # two trumpets
          drain: { positions: [closed, open], who: [mechanical], places: [rear], for: Lets water out., normal: Closed. }
        """;

    /// <summary>The network is the computer that answers: it is stopped for good, and a new one comes up at the same address with the same data.</summary>
    [Fact]
    public async Task Served_NetworkCutPageKilledClockWrong_HandsAllInOnce()
    {
        string folder = Path.Combine(_folder, "heron"), data = Path.Combine(_folder, "data");
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "book.yaml"), Heron);
        WebApplication computer = await Start(folder, data, 0);
        string address = WebHost.Address(computer);
        IBrowserContext phone = await site.Phone();
        IPage page = await Visit(phone, address, "yes");
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Seen", Exact = true }).ClickAsync();
        await Expect(page.GetByText("All handed in")).ToBeVisibleAsync();
        await computer.StopAsync();
        await computer.DisposeAsync();

        await page.Clock.SetSystemTimeAsync(new DateTime(2001, 2, 3, 0, 0, 0, DateTimeKind.Utc));
        await page.GetByRole(AriaRole.Button, new() { Name = "Onward" }).ClickAsync();
        ILocator drain = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Drain" });
        await drain.GetByRole(AriaRole.Button, new() { Name = "Differs" }).ClickAsync();
        await drain.GetByLabel("Label as found").FillAsync("DRAIN: 2");
        await drain.GetByLabel("Photo of drain").SetInputFilesAsync(new FilePayload { Name = "p.png", MimeType = "image/png", Buffer = await Picture(page, 1600, 1200) });
        await Expect(drain.GetByRole(AriaRole.Img)).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(500);
        await Expect(page.GetByText("1 waits for the network")).ToBeVisibleAsync();
        await page.CloseAsync(new() { RunBeforeUnload = false });

        page = await Visit(phone, address, "no"); // from the phone: nobody answers
        await Expect(page.GetByLabel("Label as found").Or(page.Locator("summary")).First).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Differs" })).ToHaveAttributeAsync("aria-pressed", "true");
        computer = await Start(folder, data, new Uri(address).Port);
        await page.EvaluateAsync("() => dispatchEvent(new Event('online'))");
        await Expect(page.GetByText("All handed in")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await page.WaitForSelectorAsync("[data-shelved=yes]", new() { State = WaitForSelectorState.Attached });
        await Expect(page.GetByText("All handed in")).ToBeVisibleAsync();
        await Site.Keep(page, "walkdown-served");
        IReadOnlyList<WalkDownEntry> kept = computer.Services.GetRequiredService<WalkDownDesk>().All("Heron");
        Assert.Equal(["drain", "horn"], kept.Select(e => e.Item!).Order(StringComparer.Ordinal));
        WalkDownEntry found = kept.Single(e => e.Item == "drain");
        Assert.Equal(("DRAIN: 2", 2001, true), (found.Label, found.At.Year, found.ReceivedAt.Year > 2020));
        await phone.CloseAsync();
        await Proposals(computer, address, folder);
        await computer.StopAsync();
        await computer.DisposeAsync();
    }

    /// <summary>Over the network: paired by the digits, handed in, and told what an unknown certificate means.</summary>
    [Fact]
    public async Task Shared_PairedByDigits_WalksAndHandsIn()
    {
        string folder = Path.Combine(_folder, "heron");
        Directory.CreateDirectory(folder);
        await File.WriteAllTextAsync(Path.Combine(folder, "book.yaml"), Heron);
        WebApplication computer = await Start(folder, Path.Combine(_folder, "data"), 0, share: true);
        Sharing sharing = computer.Services.GetRequiredService<ShareDesk>().Sharing!;
        IBrowserContext desk = await site.Phone(width: 1440, height: 900);
        IPage shown = await desk.NewPageAsync();
        await shown.GotoAsync(WebHost.Address(computer) + "/proposals/phones");
        await shown.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        string code = await shown.Locator(".code").InnerTextAsync();
        await Site.Keep(shown, "share-1440");
        await shown.SetViewportSizeAsync(390, 844);
        await shown.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await NothingFound(shown);
        IBrowserContext phone = await site.Phone();
        IPage page = await phone.NewPageAsync();
        await page.GotoAsync(new UriBuilder(sharing.Address!) { Host = "127.0.0.1" }.Uri.AbsoluteUri);
        await page.GetByLabel("eight digits").FillAsync(code);
        await Site.Keep(page, "pair-390");
        await NothingFound(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Pair" }).ClickAsync();
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.Keyboard.PressAsync("Enter");
        await page.GetByRole(AriaRole.Button, new() { Name = "Not seen" }).ClickAsync();
        await Expect(page.GetByText("All handed in")).ToBeVisibleAsync();
        await Site.Keep(page, "walkdown-shared-390");
        await Expect(shown.Locator(".code")).Not.ToHaveTextAsync(code);
        await Expect(shown.GetByText("One phone is paired.")).ToBeVisibleAsync();
        await phone.CloseAsync();
        await desk.CloseAsync();
        await computer.StopAsync();
        await computer.DisposeAsync();
    }

    /// <summary>What was handed in is proposed, looked at as a diff with its photo, and goes into the author's file by keys alone.</summary>
    private async Task Proposals(WebApplication computer, string address, string folder)
    {
        IBrowserContext desk = await site.Phone(width: 1440, height: 900);
        IPage page = await desk.NewPageAsync();
        await page.GotoAsync(address + "/proposals");
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "2 proposals for the book" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Drain, photo" }).ClickAsync();
        ILocator picture = page.GetByRole(AriaRole.Img, new() { Name = "drain, as Brandt found it" });
        await Expect(picture).ToBeVisibleAsync();
        Assert.Equal(1600, await picture.EvaluateAsync<int>("i => i.decode().then(() => i.naturalWidth)"));
        await Site.Keep(page, "proposals-1440");
        await NothingFound(page);
        await page.SetViewportSizeAsync(390, 844);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await Site.Keep(page, "proposals-dark-390");
        await page.Locator("h1").FocusAsync();
        await page.Keyboard.PressAsync("a");
        await Expect(page.GetByText("Drain, photo: is in the book")).ToBeVisibleAsync();
        await page.Locator("h1").FocusAsync();
        await page.Keyboard.PressAsync("r");
        await Expect(page.GetByLabel("Why not")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("write why not")).ToBeVisibleAsync();
        await page.Keyboard.TypeAsync("Painted over.");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "No proposal is open" })).ToBeVisibleAsync();
        string book = await File.ReadAllTextAsync(Path.Combine(folder, "book.yaml"));
        Assert.Matches(new Regex("normal: Closed., photo: photos/drain-[0-9a-f]{8}.jpg }"), book);
        Assert.DoesNotContain("label", book, StringComparison.Ordinal);
        Assert.NotNull(computer);
        await desk.CloseAsync();
    }

    private static async Task NothingFound(IPage page)
    {
        AxeResult axe = await page.RunAxe();
        Assert.True(axe.Violations.Length == 0, string.Join('\n', axe.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(", ", v.Nodes.Take(4).Select(n => n.Html))}")));
    }

    private static async Task<WebApplication> Start(string book, string data, int port, bool share = false)
    {
        DiagnosticList found = [];
        WebApplication app = WebHost.Build(new ServeRequest(book, port) { DataFolder = data, SharePort = share ? 0 : null }, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        await app.StartAsync();
        return app;
    }

    private static async Task<IPage> Visit(IBrowserContext phone, string address, string shelved)
    {
        IPage page = await phone.NewPageAsync();
        await page.GotoAsync(address + "/walkdown/");
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        if (shelved == "yes")
        {
            await page.WaitForSelectorAsync("[data-shelved=yes]", new() { State = WaitForSelectorState.Attached });
        }

        return page;
    }
}
