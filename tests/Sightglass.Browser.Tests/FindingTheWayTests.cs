using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>What is not in sight is told of: what goes on beside the page, and where a wrong address leads.</summary>
public sealed class FindingTheWayTests(Site site) : IClassFixture<Site>
{
    /// <summary>A drawing wider than the page fades where it goes on, says so in words, and is scrolled by keys; one that fits says nothing.</summary>
    [Theory]
    [InlineData(390)]
    [InlineData(1440)]
    [InlineData(1920)]
    public async Task Machine_DrawingWiderThanThePage_SaysSoAndIsScrolledByKeys(int width)
    {
        IPage page = await site.Open("/machine?system=brake air", width);
        ILocator drawing = page.Locator("#diagram");
        ILocator says = page.GetByText("It is wider than this page");
        await Expect(drawing).ToHaveAttributeAsync("data-more", "right");
        await Expect(says).ToBeVisibleAsync();
        await drawing.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(drawing).ToHaveAttributeAsync("data-more", "left right");
        for (int i = 0; i < 200 && await drawing.GetAttributeAsync("data-more") != "left"; i++)
        {
            await page.Keyboard.PressAsync("ArrowRight");
        }

        await Expect(drawing).ToHaveAttributeAsync("data-more", "left");
        await page.SetViewportSizeAsync(4000, 1000);
        await Expect(says).ToBeHiddenAsync();
        Assert.Null(await drawing.GetAttributeAsync("data-more"));
    }

    /// <summary>The strip grows with the window: where the person stands stays in view.</summary>
    [Fact]
    public async Task Walk_WindowMadeHigher_StaysWhereThePersonStands()
    {
        IPage page = await site.Open("/walk?train=night mail", 1920, 900);
        const string InView = "() => { const y = document.querySelector('#strip-scroll .you').getBoundingClientRect(); return y.left > 0 && y.right < innerWidth; }";
        await page.WaitForFunctionAsync(InView);
        await page.SetViewportSizeAsync(1920, 1400);
        await page.WaitForFunctionAsync(InView);
    }

    [Fact]
    public async Task Address_ThatIsWrong_LeadsBack()
    {
        IBrowserContext browser = await site.Phone(width: 1440);
        IPage page = await browser.NewPageAsync();
        IResponse? answer = await page.GotoAsync(site.Address + "/nowhere");
        Assert.Equal(404, answer!.Status);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "There is no such page" })).ToBeVisibleAsync();
        await page.Locator("main").GetByRole(AriaRole.Link, new() { Name = "the walk" }).ClickAsync();
        await Expect(page.GetByText("stop 1 of")).ToBeVisibleAsync();
        await browser.CloseAsync();
    }
}
