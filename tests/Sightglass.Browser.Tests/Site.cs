using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Room;

namespace Sightglass.Browser.Tests;

/// <summary>The pages of the demo book, served on a free port, and a browser to look at them.</summary>
public class Site : IAsyncLifetime
{
    private static readonly string[] s_flags =
    [
        "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
        "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream", // a microphone that hums, and nobody to be asked
    ];

    /// <summary>Chromium without windows takes half of the processor that the whole one takes for the same pages; that does as well.</summary>
    private static readonly string s_browser = File.Exists("/usr/bin/chromium-headless-shell") ? "/usr/bin/chromium-headless-shell" : "/usr/bin/chromium";

    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private WebApplication? _app;

    /// <summary>The folder of the book that is served.</summary>
    protected virtual string BookFolder => Folder("curlew");

    public string Address { get; private set; } = "";

    /// <summary>The training room behind the pages.</summary>
    public TrainingRoom Room => _app!.Services.GetRequiredService<TrainingRoom>();

    /// <summary>The book behind the pages.</summary>
    public BookShelf Shelf => _app!.Services.GetRequiredService<MachineRoom>().Shelf;

    /// <summary>Where the sessions are recorded.</summary>
    public string Records { get; } = Directory.CreateTempSubdirectory("sightglass-records-").FullName;

    public async ValueTask InitializeAsync()
    {
        DiagnosticList found = new();
        _app = WebHost.Build(new(BookFolder, 0) { RecordFolder = Records, RuleFolders = [Path.Combine(Folder("curlew"), "..", "..", "rules", "us-cfr49")] }, found) ?? throw new InvalidOperationException(string.Join('\n', found));
        await _app.StartAsync();
        Assertions.SetDefaultExpectTimeout(60_000); // a plan of a train is made while a test waits: on a busy machine that takes longer than the usual five seconds
        Address = WebHost.Address(_app);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = s_browser, Args = s_flags });
    }

    /// <summary>A browser of its own, on a page whose circuit is there; <paramref name="prepare"/> is script that runs before any of the page's.</summary>
    public async Task<IPage> Open(string path, int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light, string? prepare = null)
    {
        IBrowserContext context = await _browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce });
        context.SetDefaultNavigationTimeout(90_000); // the first page waits for all of the program to be made ready, beside the tests of other projects
        IPage page = await context.NewPageAsync();
        if (prepare is not null)
        {
            await page.AddInitScriptAsync(prepare);
        }

        List<string> said = [];
        page.Console += (_, m) => { if (m.Type == "error") { said.Add(m.Text); } };
        await page.GotoAsync(Address + path);
        if (!path.StartsWith("/rules", StringComparison.Ordinal) && path != "/bets" && path != "/calculators" && path != "/searches" && path != "/routes" && path != "/trials")
        {
            await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached }); // rules and lists are only read: nothing there listens
        }

        Assert.Empty(said);
        return page;
    }

    /// <summary>A browser of its own, as on a phone: its storage lives as long as it does.</summary>
    public Task<IBrowserContext> Phone(ColorScheme scheme = ColorScheme.Light, int width = 390, int height = 844) => _browser!.NewContextAsync(
        new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, ReducedMotion = ReducedMotion.Reduce, AcceptDownloads = true, IgnoreHTTPSErrors = true, HasTouch = width < 600 });

    /// <summary>Keeps a picture of the whole page where the environment names a folder for them; <c>docs/tour/retake</c> does.</summary>
    public static async Task Keep(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("SIGHTGLASS_SHOTS") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        }
    }

    public virtual async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }

        _playwright?.Dispose();
        if (_app is not null)
        {
            await _app.StopAsync();
            await _app.DisposeAsync();
        }

        Directory.Delete(Records, recursive: true);
        GC.SuppressFinalize(this);
    }

    public static string Folder(string name, [CallerFilePath] string here = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "books", name));
}
