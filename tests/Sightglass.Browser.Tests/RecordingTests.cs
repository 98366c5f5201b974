using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A recorder's file that is brought, mapped by hand, held against the machine and made into a drill, by keyboard alone.</summary>
public sealed class RecordingTests(CopiedSite site) : IClassFixture<CopiedSite>
{
    private const string Csv = "Time,Speed [mph],Throttle,Water out [degF],Brake pipe [psi],Remark\n14:00:00,20,8,200,110,\n14:00:05,19,8,201,110,\n14:00:10,18,1,202,109,=1+1\n14:00:15,17,0,---,110,\n14:00:20,16,0,203,110,\n";

    /// <summary>A comparison and the proof of a book take their time, beside the tests of other projects.</summary>
    private const float Patience = 180_000;

    [Theory]
    [InlineData(ColorScheme.Light, 1440, 900)]
    [InlineData(ColorScheme.Dark, 390, 844)]
    public async Task File_PastedAndMapped_BecomesADrill(ColorScheme scheme, int width, int height)
    {
        string name = $"a run at {width}";
        IPage page = await site.Open("/recordings", width, height, scheme);
        await Look(page, $"recordings-{width}");
        await page.Locator("#paste").FocusAsync();
        await page.Keyboard.InsertTextAsync(Csv);
        await page.Locator("#called").FillAsync(name);
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Say what its columns are" })).ToBeVisibleAsync();
        await Expect(page.Locator(".rec-map > .rec-verdict")).ToHaveTextAsync("Nothing is said of any column yet.");

        // what is said wrongly stands at its place
        ILocator speed = Column(page, "Speed [mph]");
        await Say(speed, "Sets at the start", "sped");
        await Expect(speed.Locator(".rec-wrong")).ToContainTextAsync("did you mean");
        await Expect(speed.GetByLabel("Sets at the start")).ToHaveAttributeAsync("aria-invalid", "true");
        await Look(page, $"recording-wrong-{width}");
        await Say(speed, "Sets at the start", "speed");
        await Expect(speed.Locator(".calc-wrong")).ToHaveCountAsync(0);
        await Say(Column(page, "Throttle"), "Sets at the start", "throttle");
        foreach ((string text, string means) in new[] { ("8", "notch 8"), ("1", "notch 1"), ("0", "idle") })
        {
            await Column(page, "Throttle").GetByRole(AriaRole.Combobox, new() { Name = text, Exact = true }).SelectOptionAsync(means);
        }

        await Say(Column(page, "Water out [degF]"), "Sets at the start", "temperature of cooling water");
        await Say(Column(page, "Water out [degF]"), "Is compared with", "water temperature gauge");
        await Say(Column(page, "Water out [degF]"), "Within", "4 K");
        await Say(Column(page, "Brake pipe [psi]"), "Is compared with", "pressure of brake pipe");
        await Expect(page.Locator(".rec-map > .rec-verdict")).ToHaveTextAsync("The book would read it: 5 rows from 14:00:00 to 14:00:20.");

        await page.Locator("#rows").SelectOptionAsync("8");
        await page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).PressAsync("Enter");
        await Expect(page.Locator(".rec-compared .rec-verdict")).ToContainTextAsync("explain the record", new() { Timeout = Patience });
        await Expect(page.Locator(width > 640 ? ".rec-plot .wide svg" : ".rec-plot .narrow svg").First).ToBeVisibleAsync();
        await page.GetByLabel("First moment").FillAsync("noon");
        await Expect(page.Locator("#stretch")).ToContainTextAsync("`from` is `noon`");
        await page.GetByLabel("First moment").FillAsync("14:00:05");
        await Expect(page.Locator("#stretch")).ToHaveTextAsync("3 rows, from 14:00:05 to 14:00:20, are states to draw from.");
        await Look(page, $"recording-mapped-{width}");

        await page.GetByLabel("Title of the drill").FillAsync($"hot at {width}");
        await page.GetByLabel("The card that solves it").SelectOptionAsync("the-engine-runs-hot");
        await page.GetByRole(AriaRole.Button, new() { Name = "Make a first drill of it" }).PressAsync("Enter");
        ILocator link = page.GetByRole(AriaRole.Link, new() { Name = "Set it up in the room" });
        await Expect(link).ToBeVisibleAsync(new() { Timeout = Patience });
        await Look(page, $"recording-made-{width}");
        Assert.Equal(["the-engine-runs-hot"], site.Shelf.Book.Drills[$"hot at {width}"].SolvedBy);
        Assert.Equal(5, site.Shelf.Book.Recordings[name].Table!.Rows);
        await page.GetByRole(AriaRole.Link, new() { Name = "Go on with the recording of the book" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What its columns are", Exact = true })).ToBeVisibleAsync();
        await Look(page, $"recording-{width}");
    }

    [Fact]
    public async Task Recording_OfTheBook_IsComparedAndDrawn()
    {
        IPage page = await site.Open("/recordings/stopped%20on%20the%20grade");
        await page.Locator("#rows").SelectOptionAsync("24");
        await page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).PressAsync("Enter");
        await Expect(page.Locator(".rec-verdict")).ToHaveTextAsync("The states explain the record as nearly as is asked.", new() { Timeout = Patience });
        await Look(page, "recording-of-the-book-1440");
    }

    /// <summary>What its columns are is changed where it stands; what is typed of a drill is there when the page is loaded again. By keyboard.</summary>
    [Theory]
    [InlineData(ColorScheme.Light, 1440, 900)]
    [InlineData(ColorScheme.Dark, 390, 844)]
    public async Task Recording_OfTheBook_IsChangedOnItsPage(ColorScheme scheme, int width, int height)
    {
        IPage page = await site.Open("/recordings/stopped%20on%20the%20grade", width, height, scheme);
        await page.GetByLabel("Title of the drill").FillAsync($"kept at {width}");
        await page.GetByLabel("The card that solves it").SelectOptionAsync("the-engine-runs-hot");
        await page.GetByLabel("First moment").FillAsync("noon");
        await Expect(page.Locator("#stretch")).ToContainTextAsync("`from` is `noon`");
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Title of the drill")).ToHaveValueAsync($"kept at {width}");
        await Expect(page.GetByLabel("The card that solves it")).ToHaveValueAsync("the-engine-runs-hot");
        await Expect(page.Locator("#stretch")).ToContainTextAsync("`from` is `noon`");
        await page.GetByRole(AriaRole.Link, new() { Name = "Change what its columns are" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Change it in the book" })).ToBeVisibleAsync();
        ILocator oil = Column(page, "Oil out [degF]");
        await Say(oil, "Within", "parsecs");
        await Expect(oil.GetByLabel("Within")).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Write the change" })).ToBeDisabledAsync();
        await Say(oil, "Within", $"{Within(width)} K");
        await Expect(oil.Locator(".calc-wrong")).ToHaveCountAsync(0);
        await Look(page, $"recording-change-{width}");
        await page.GetByRole(AriaRole.Button, new() { Name = "Write the change" }).PressAsync("Enter");
        await Expect(page.Locator(".rec-made")).ToContainTextAsync("It is changed, in recordings.yaml.", new() { Timeout = Patience });
        await page.Locator(".rec-made summary").PressAsync("Enter");
        await Expect(page.Locator(".rec-made pre")).ToContainTextAsync($"within: {Within(width)} K");
        await Look(page, $"recording-changed-{width}");
        Assert.Equal(Within(width), site.Shelf.Book.Recordings["stopped on the grade"].Columns.Single(c => c.Head == "Oil out [degF]").Within);
        await page.GetByRole(AriaRole.Link, new() { Name = "Go on with the recording of the book" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What its columns are", Exact = true })).ToBeVisibleAsync();
    }

    /// <summary>What is too large, or no text, is told, and what was typed beside stays.</summary>
    [Fact]
    public async Task File_ThatIsNone_IsRefused_AndNothingThatWasTypedIsLost()
    {
        string large = Path.Combine(site.Records, "large.csv"), foreign = Path.Combine(site.Records, "foreign.csv");
        await File.WriteAllBytesAsync(large, new byte[9 << 20], TestContext.Current.CancellationToken);
        await File.WriteAllBytesAsync(foreign, [0xFF, 0xFE, (byte)'a', 0, (byte)',', 0], TestContext.Current.CancellationToken);
        IPage page = await site.Open("/recordings");
        await page.Locator("#paste").FillAsync("a,\"b\n1,2\n");
        await page.Locator("#file").SetInputFilesAsync(large);
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("8 MiB");
        await page.Locator("#file").SetInputFilesAsync(foreign);
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("UTF-16");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take these rows" }).PressAsync("Enter");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("this quote is not closed");
        await Expect(page.Locator("#paste")).ToHaveValueAsync("a,\"b\n1,2\n");
        await Look(page, "recordings-refused");
    }

    /// <summary>Another for each test of one book, K.</summary>
    private static int Within(int width) => width > 640 ? 6 : 7;

    private static ILocator Column(IPage page, string head) => page.Locator(".rec-column").Filter(new() { Has = page.GetByText(head, new() { Exact = true }) });

    private static async Task Say(ILocator column, string field, string says)
    {
        await column.GetByLabel(field).FillAsync(says);
        await column.GetByLabel(field).PressAsync("Tab");
    }

    private static async Task Look(IPage page, string name)
    {
        AxeResult result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}")));
        Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"), "the page is wider than its window");
        await Site.Keep(page, name);
    }
}
