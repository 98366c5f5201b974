using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Host;

namespace Sightglass.Bench;

/// <summary>
/// How long a page takes on an old laptop: the browser's processor slowed six times, nothing in its cache. To the first picture, until it listens, and from a key or a press to what comes of it.
/// </summary>
internal static class PagesBench
{
    private const int Slower = 6;

    /// <summary>Keeps when the page listened, and tells when anything in it has changed after something was done.</summary>
    private const string Watch = """
        new MutationObserver((_, o) => { if (document.querySelector('[data-alive=yes]')) { window.aliveAt = performance.now(); o.disconnect(); } }).observe(document, { subtree: true, childList: true, attributes: true });
        const begin = () => {
          if (window.answerMs !== 0) return;
          const began = performance.now();
          new MutationObserver((_, o) => { o.disconnect(); requestAnimationFrame(() => window.answerMs = performance.now() - began); }).observe(document.body, window.pressedOnly ? { subtree: true, attributeFilter: ['aria-pressed'] } : { subtree: true, childList: true, attributes: true, characterData: true });
        };
        addEventListener('keydown', begin, true);
        addEventListener('pointerdown', begin, true);
        """;

    private static readonly (string Name, string Path, string Act)[] s_pages =
    [
        ("walk: the next place", "/walk", "key ArrowLeft"),
        ("machine: let it go", "/machine", "pressed .seg button >> nth=2"),
        ("trial of a card: try it", "/trials/drain-water", ".trial-ask .btn"),
        ("instructor's room: set up a drill", "/room", ".room-clock > .btn >> nth=-1"),
        ("trainee: take up a drill", "/drill", "button[data-do=practise] >> nth=0"),
    ];

    public static async Task RunAsync(Report report, int rounds)
    {
        await using WebApplication app = WebHost.Build(new(Path.Combine(Paths.Root, "books", "curlew"), 0), new DiagnosticList()) ?? throw new InvalidOperationException("the demo cannot be served");
        await app.StartAsync();
        string address = WebHost.Address(app);
        using IPlaywright playwright = await Playwright.CreateAsync();
        string shell = File.Exists("/usr/bin/chromium-headless-shell") ? "/usr/bin/chromium-headless-shell" : "/usr/bin/chromium";
        await using IBrowser browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = shell, Args = ["--headless", "--no-sandbox", "--disable-gpu"] });
        report.Section("First load of a page");
        report.Line(FormattableString.Invariant($"The browser's processor slowed {Slower} times, nothing cached, 1366 × 768; the server on the same two cores, warm. Median of {rounds}. Bytes as they are sent."));
        report.Line();
        report.Header("page: what is done first", "first picture, ms", "listens, ms", "from doing to its answer, ms", "together, ms", "bytes to load");
        foreach ((string name, string path, string act) in s_pages)
        {
            List<double[]> all = [];
            for (int i = 0; i <= rounds; i++)
            {
                double[] one = await Measure(browser, address, path, act, slower: i == 0 ? 1 : Slower);
                if (i > 0)
                {
                    all.Add(one); // the first makes the server ready
                }
            }

            double[] median = [.. Enumerable.Range(0, all[0].Length).Select(k => all.Select(a => a[k]).Order().ElementAt(all.Count / 2))];
            report.Row(name, F(median[0]), F(median[1]), F(median[2]), F(median[1] + median[2]), F(median[3]));
        }
    }

    private static async Task<double[]> Measure(IBrowser browser, string address, string path, string act, double slower)
    {
        await using IBrowserContext context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 1366, Height = 768 } });
        context.SetDefaultTimeout(120_000);
        IPage page = await context.NewPageAsync();
        if (path == "/drill")
        {
            await page.GotoAsync(address + path);
            await page.Locator("input[name=name]").FillAsync("A trainee");
            await page.Locator("form button").First.ClickAsync();
            await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
            await page.GotoAsync("about:blank");
        }

        ICDPSession tools = await context.NewCDPSessionAsync(page);
        await tools.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = slower });
        await tools.SendAsync("Network.setCacheDisabled", new() { ["cacheDisabled"] = true });
        await page.AddInitScriptAsync(Watch);
        await page.GotoAsync(address + path);
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached }); // the page lets nothing be evaluated that polls
        await page.WaitForTimeoutAsync(500);
        await page.EvaluateAsync("only => { window.pressedOnly = only; window.answerMs = 0; }", act.StartsWith("pressed ", StringComparison.Ordinal)); // a page that is alive changes by itself
        await (act.StartsWith("key ", StringComparison.Ordinal) ? page.Keyboard.PressAsync(act[4..]) : page.Locator(act.Replace("pressed ", "", StringComparison.Ordinal)).ClickAsync());
        double answer = 0;
        for (int i = 0; i < 200 && answer == 0; i++)
        {
            await Task.Delay(50);
            answer = await page.EvaluateAsync<double>("window.answerMs");
        }

        double[] told = await page.EvaluateAsync<double[]>("[performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0, window.aliveAt, 0, performance.getEntriesByType('navigation')[0].transferSize + performance.getEntriesByType('resource').reduce((s, e) => s + e.transferSize, 0)]");
        return [told[0], told[1], answer, told[3]];
    }

    private static string F(double value) => value.ToString("0", CultureInfo.InvariantCulture);
}
