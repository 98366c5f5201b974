using System.Text.Json;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Paper;
using Sightglass.Plant.Kinds;
using Sightglass.Training.Routes;
using Sightglass.Training.WalkDowns;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>The walk-down as one file on a phone: killed, full, by keyboard, and what it hands in.</summary>
public sealed partial class WalkDownTests(Site site) : IClassFixture<Site>, IDisposable
{
    private static readonly Lazy<ClassBook> s_book = new(() => BookReader.Read(Site.Folder("curlew"), KindLibrary.Catalog, new DiagnosticList())!.For("4107"));

    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-walkdown-").FullName;

    [Fact]
    public async Task File_KilledInTheMiddle_HasItAllAndHandsItIn()
    {
        IBrowserContext phone = await site.Phone();
        List<string> asked = [];
        phone.Request += (_, r) => { if (!r.Url.StartsWith("file:", StringComparison.Ordinal) && !r.Url.StartsWith("blob:", StringComparison.Ordinal) && !r.Url.StartsWith("data:", StringComparison.Ordinal)) { asked.Add(r.Url); } };
        IPage page = await Open(phone, "fuel");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Walk-down" })).ToBeVisibleAsync();
        await Site.Keep(page, "walkdown-begin");
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await Reach(page, "Aft return valve");
        ILocator valve = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Aft return valve" });
        await valve.GetByRole(AriaRole.Button, new() { Name = "Differs" }).ClickAsync();
        await valve.GetByLabel("Label as found").FillAsync("AFT RETURN: 3 # \"old\"");
        await valve.GetByLabel("Which way is open").FillAsync("handle to the rear");
        await valve.GetByLabel("Photo of aft return valve").SetInputFilesAsync(new FilePayload { Name = "p.png", MimeType = "image/png", Buffer = await Picture(page, 3000, 1500) });
        await Expect(valve.GetByRole(AriaRole.Img)).ToBeVisibleAsync();
        await valve.GetByRole(AriaRole.Button, new() { Name = "Add a mark" }).ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Name", Exact = true }).FillAsync("stop pin");
        await page.Keyboard.PressAsync("Enter");
        await Expect(valve.GetByRole(AriaRole.Button, new() { Name = "Mark: stop pin" })).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await valve.GetByLabel("Note").FillAsync("Handle bent.");
        await page.WaitForTimeoutAsync(500); // typing is written 400 ms after the last letter; a page that is killed asks nobody
        await Expect(page.GetByRole(AriaRole.Status).First).ToContainTextAsync("all kept on this phone");
        await Site.Keep(page, "walkdown-item");
        await page.CloseAsync(new() { RunBeforeUnload = false });

        page = await Open(phone, "fuel");
        valve = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Aft return valve" });
        await Expect(valve.GetByRole(AriaRole.Button, new() { Name = "Differs" })).ToHaveAttributeAsync("aria-pressed", "true");
        await valve.Locator("summary").ClickAsync();
        await Expect(valve.GetByLabel("Label as found")).ToHaveValueAsync("AFT RETURN: 3 # \"old\"");
        await Expect(valve.GetByLabel("Note")).ToHaveValueAsync("Handle bent.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand in" }).ClickAsync();
        IDownload file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save the result file" }).ClickAsync());
        using JsonDocument result = JsonDocument.Parse(await File.ReadAllTextAsync(await file.PathAsync()));
        JsonElement entry = Assert.Single(result.RootElement.GetProperty("entries").EnumerateArray());
        Assert.Equal("differs", entry.GetProperty("state").GetString());
        Assert.Equal("handle to the rear", entry.GetProperty("opens_towards").GetString());
        Assert.Equal(0.42, Assert.Single(entry.GetProperty("marks").EnumerateArray()).GetProperty("x").GetDouble(), 1e-9);
        byte[] photo = entry.GetProperty("photo").GetProperty("base64").GetBytesFromBase64();
        Assert.Equal([0xFF, 0xD8], photo[..2]);
        Assert.Empty(asked);
        await phone.CloseAsync();
    }

    [Fact]
    public async Task File_OnAFullPhone_SaysThatNothingIsKeptAndGoesOn()
    {
        IBrowserContext phone = await site.Phone();
        IPage page = await Open(phone, "fuel");
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Onward" }).ClickAsync();
        await page.EvaluateAsync("() => { IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }; }");
        await page.GetByRole(AriaRole.Button, new() { Name = "Seen", Exact = true }).First.ClickAsync();
        await Expect(page.GetByText("the phone has no room left")).ToBeVisibleAsync();
        await Site.Keep(page, "walkdown-full");
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand in" }).ClickAsync();
        await Expect(page.GetByText("1 of ")).ToBeVisibleAsync();
        await phone.CloseAsync();
    }

    /// <summary>A voice note: recorded, there after the page was killed, heard again, and in the result file; one that is cut short by another program coming to the front is kept as far as it went.</summary>
    [Fact]
    public async Task File_VoiceNote_OutlivesThePageAndIsHandedIn()
    {
        IBrowserContext phone = await site.Phone();
        IPage page = await Open(phone, "fuel");
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.GetByRole(AriaRole.Button, new() { Name = "Begin" }).ClickAsync();
        await Reach(page, "Aft return valve");
        ILocator valve = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Aft return valve" });
        await valve.Locator("summary").ClickAsync();
        await Record(page, valve, () => valve.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync());
        await Expect(valve.Locator("summary")).ToContainTextAsync("voice");
        await Site.Keep(page, "walkdown-voice");
        await NothingFound(page);
        await Record(page, valve, () => page.EvaluateAsync("() => { Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true }); document.dispatchEvent(new Event('visibilitychange')); }"));
        await Expect(page.GetByRole(AriaRole.Status).First).ToContainTextAsync("all kept on this phone");
        await page.CloseAsync(new() { RunBeforeUnload = false });

        page = await Open(phone, "fuel");
        valve = page.GetByRole(AriaRole.Listitem).Filter(new() { HasText = "Aft return valve" });
        await valve.Locator("summary").ClickAsync();
        double heard = await valve.Locator("audio").EvaluateAsync<double>("async a => { a.muted = true; await a.play(); await new Promise(r => a.onended = r); return a.currentTime; }");
        Assert.InRange(heard, 0.3, 30);
        Assert.Equal(1, await page.EvaluateAsync<int>("async () => { const open = indexedDB.open((await indexedDB.databases())[0].name); await new Promise(r => open.onsuccess = r); const count = open.result.transaction('files').objectStore('files').count(); await new Promise(r => count.onsuccess = r); return count.result; }"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Hand in" }).ClickAsync();
        IDownload file = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Button, new() { Name = "Save the result file" }).ClickAsync());
        List<string> wrong = [];
        WalkDownResult? result = WalkDownReader.Read(await File.ReadAllBytesAsync(await file.PathAsync()), s_book.Value, wrong);
        Assert.Empty(wrong);
        Assert.Equal(".webm", Assert.Single(result!.Entries).Voice?.Ending);
        await phone.CloseAsync();
    }

    private static async Task Record(IPage page, ILocator item, Func<Task> end)
    {
        await item.GetByRole(AriaRole.Button, new() { Name = "Record a voice note" }).ClickAsync();
        await Expect(item.GetByRole(AriaRole.Button, new() { Name = "Stop" })).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(700); // so long is spoken
        await end();
        await Expect(item.GetByRole(AriaRole.Button, new() { Name = "Record a voice note" })).ToBeVisibleAsync();
        await Expect(item.Locator("audio")).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(ColorScheme.Light, 390)]
    [InlineData(ColorScheme.Dark, 1440)]
    public async Task File_AtAPlace_HasNothingThatAxeFindsAndIsWalkedByKeys(ColorScheme scheme, int width)
    {
        IBrowserContext phone = await site.Phone(scheme, width, 844);
        IPage page = await Open(phone, "first look");
        await page.GetByLabel("Who walks").FillAsync("Brandt");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByText("stop 1 of")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.GetByText("stop 2 of")).ToBeVisibleAsync();
        await page.Locator("summary").First.ClickAsync();
        await Site.Keep(page, $"walkdown-{scheme}-{width}".ToLowerInvariant());
        await NothingFound(page);
        string[] small = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('button,summary,input,textarea,select')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 44 && !e.closest('.file')).map(e => e.outerHTML.slice(0, 80))");
        Assert.Empty(small);
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"));
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.GetByText("stop 1 of")).ToBeVisibleAsync();
        await phone.CloseAsync();
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private async Task<IPage> Open(IBrowserContext phone, string purpose)
    {
        string file = Path.Combine(_folder, purpose + ".html");
        if (!File.Exists(file))
        {
            await File.WriteAllTextAsync(file, WalkDownPaper.Alone(WalkDownSheet.Of(RoutePlanner.Plan(s_book.Value, RoutePurposes.Find(purpose, s_book.Value)!)!)));
        }

        IPage page = await phone.NewPageAsync();
        List<string> said = [];
        page.Console += (_, m) => { if (m.Type == "error") { said.Add(m.Text); } };
        page.PageError += (_, e) => said.Add(e);
        await page.GotoAsync(new Uri(file).AbsoluteUri);
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        Assert.Empty(said);
        return page;
    }

    private static async Task Reach(IPage page, string item)
    {
        for (int i = 0; i < 40 && await page.GetByRole(AriaRole.Heading, new() { Name = item }).CountAsync() == 0; i++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = "Onward" }).ClickAsync();
        }
    }

    /// <summary>A picture as a camera might give it, made by the browser.</summary>
    private static async Task<byte[]> Picture(IPage page, int width, int height) => Convert.FromBase64String(await page.EvaluateAsync<string>(
        $"() => {{ const c = document.createElement('canvas'); c.width = {width}; c.height = {height}; const p = c.getContext('2d'); p.fillStyle = '#8aa'; p.fillRect(0, 0, {width}, {height}); p.fillStyle = '#a53'; p.fillRect(900, 500, 600, 300); return c.toDataURL('image/png').split(',')[1]; }}"));
}
