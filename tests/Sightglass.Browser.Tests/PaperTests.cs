using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>A card on the page of papers: tried, reviewed, approved, given, called back, by keyboard alone.</summary>
public sealed class PaperTests(Site site) : IClassFixture<Site>
{
    [Fact]
    public async Task Papers_ACardFromItsTrialToTheRecall_ByKeyboard()
    {
        IPage page = await site.Open("/papers?card=drain-water");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Drain the water from the compartments" })).ToBeVisibleAsync();
        await Press(page, "Try it and make an edition");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Write who made it");
        await Fill(page, "You are", "A. Nowak");
        await Press(page, "Try it and make an edition");
        ILocator edition = page.GetByRole(AriaRole.Article, new() { Name = "Edition 1" });
        await Expect(edition).ToContainTextAsync("written by A. Nowak", new() { Timeout = 120_000 });
        await Expect(edition).ToContainTextAsync("Tried by simulation in 512 cases");

        await Press(page, "I have reviewed it");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("somebody else reviews it");
        await Fill(page, "You are", "B. Ellis");
        await Press(page, "I have reviewed it");
        await Expect(edition).ToContainTextAsync("Reviewed by B. Ellis");
        await Fill(page, "You are", "C. Okafor");
        await Press(page, "I approve it");
        await Expect(edition).ToContainTextAsync("Approved by C. Okafor");
        await Fill(page, "Give to", "D. Reyes");
        await page.Keyboard.PressAsync("Enter");
        await Expect(edition.GetByRole(AriaRole.Row)).ToHaveCountAsync(2);
        await Site.Keep(page, "papers");

        IAPIResponse pdf = await page.APIRequest.GetAsync(site.Address + "/" + await edition.GetByRole(AriaRole.Link, new() { Name = "pocket, A6" }).GetAttributeAsync("href"));
        Assert.Equal("application/pdf", pdf.Headers["content-type"]);
        Assert.Equal("%PDF-"u8.ToArray(), (await pdf.BodyAsync())[..5]);

        IAPIResponse sheet = await page.APIRequest.GetAsync(site.Address + "/papers/system.pdf?system=fuel&units=us");
        Assert.Equal("application/pdf", sheet.Headers["content-type"]);
        Assert.Equal(404, (await page.APIRequest.GetAsync(site.Address + "/papers/system.pdf?system=steam")).Status);

        await Press(page, "Withdraw");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Write why");
        await Fill(page, "Why", "the drain cock of 4107 was moved");
        await Press(page, "Withdraw");
        await Expect(edition).ToContainTextAsync("WITHDRAWN. Not to be worked by.");
        await Expect(page.Locator(".papers-recall")).ToContainTextAsync("Copy 1 of edition 1, D. Reyes");
        await Expect(page.Locator(".papers-head .lead")).ToContainTextAsync("One copy is to be called back.");
        Deque.AxeCore.Commons.AxeResult found = await page.RunAxe();
        Assert.Empty(found.Violations.Select(v => $"{v.Id}: {string.Join(", ", v.Nodes.Select(n => n.Html))}"));
        await Site.Keep(page, "papers-recall");
        await page.SetViewportSizeAsync(390, 844);
        await Site.Keep(page, "papers-phone");
        Assert.Equal(390, await page.EvaluateAsync<int>("document.documentElement.scrollWidth"));

        await page.Locator(".papers-recall").GetByRole(AriaRole.Button).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".papers-recall")).ToHaveCountAsync(0);

        IPage dark = await site.Open("/papers?card=drain-water", scheme: ColorScheme.Dark);
        await Expect(dark.GetByRole(AriaRole.Article)).ToContainTextAsync("WITHDRAWN");
        await Site.Keep(dark, "papers-dark");
    }

    private static async Task Press(IPage page, string button)
    {
        await page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
    }

    private static async Task Fill(IPage page, string field, string text)
    {
        await page.GetByLabel(field).FocusAsync();
        await page.GetByLabel(field).FillAsync(text);
    }
}
