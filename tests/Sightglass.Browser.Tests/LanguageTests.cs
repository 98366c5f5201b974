using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Sightglass.Browser.Tests;

/// <summary>Two browsers in two languages before one machine.</summary>
public sealed class LanguageTests(Site site) : IClassFixture<Site>
{
    /// <summary>What one browser does is seen by the other, in the other's language: what is written anew and what is sent to a drawing.</summary>
    [Fact]
    public async Task TwoBrowsers_OneMachine_EachInItsOwnLanguage()
    {
        IPage english = await site.Open("/machine");
        IPage spanish = await site.Open("/machine?language=es");
        await Expect(english.Locator("html")).ToHaveAttributeAsync("lang", "en");
        await Expect(spanish.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await Expect(spanish).Not.ToHaveURLAsync(new System.Text.RegularExpressions.Regex("language"));

        // A situation that the Spanish one begins, so that the English page is written anew by its doing; and the other way round.
        await Begin(spanish, "Comenzar una situación", "Situación", "Comenzar, detenido", "leaking compartment");
        await Expect(english.Locator(".bar-title")).ToContainTextAsync("leaking compartment, case 0");
        await Expect(english.Locator(".bar-title")).ToContainTextAsync("grade 0.9 %");
        await Expect(spanish.Locator(".bar-title")).ToContainTextAsync(", caso 0");
        await Expect(spanish.Locator(".bar-title")).ToContainTextAsync("pendiente 0.9 %");
        await Begin(english, "Begin a situation", "Situation", "Begin, held", "idle, nothing wrong");
        await Expect(english.Locator(".bar-title")).ToContainTextAsync("idle, nothing wrong, case 0");
        await Expect(spanish.Locator(".bar-title")).ToContainTextAsync("en ralentí, nada mal, caso 0");

        // Time that goes for both: gauges and curves are sent as they change.
        await english.GetByRole(AriaRole.Button, new() { Name = "×60" }).ClickAsync();
        await Expect(spanish.Locator("#clock")).Not.ToHaveTextAsync("0:00:00");
        await spanish.GetByRole(AriaRole.Button, new() { Name = "Detener" }).ClickAsync();
        await Expect(english.GetByRole(AriaRole.Button, new() { Name = "Hold", Exact = true })).ToHaveAttributeAsync("aria-pressed", "true");
        await Expect(spanish.Locator("#trend")).ToContainTextAsync("indica");
        await Expect(english.Locator("#trend")).ToContainTextAsync("shows");
        await Expect(spanish.Locator("#trend")).Not.ToContainTextAsync("shows");
        await Expect(english.Locator("#trend")).Not.ToContainTextAsync("indica");
        await Expect(spanish.Locator("h2").First).ToContainTextAsync("Los últimos 30 minutos");
        await Expect(english.Locator("h2").First).ToContainTextAsync("The last 30 minutes");
        await Site.Keep(spanish, "machine-es");
    }

    /// <summary>The choice is in the head of every page, holds on the next one, and leads back.</summary>
    [Fact]
    public async Task Language_ChosenInTheHead_HoldsUntilAnother()
    {
        IPage page = await site.Open("/walk?at=fuel panel, right");
        await page.GetByRole(AriaRole.Link, new() { Name = "Español" }).ClickAsync();
        await Expect(page.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("at=fuel"));
        await Expect(page.GetByText("Visto desde: Panel de combustible")).ToBeVisibleAsync();
        await page.WaitForSelectorAsync("[data-alive=yes]", new() { State = WaitForSelectorState.Attached });
        await page.Keyboard.PressAsync("Home");
        await Expect(page.GetByText("parada 1 de")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Notas", Exact = true }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Preguntas hechas" })).ToBeVisibleAsync();
        await Expect(page).ToHaveTitleAsync("Notas · Sightglass");
        await page.GetByRole(AriaRole.Link, new() { Name = "English" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Questions asked" })).ToBeVisibleAsync();
    }

    /// <summary>A page that is open goes on in its language when another one was chosen beside it and its connection is made anew.</summary>
    [Fact]
    public async Task Language_ChosenBeside_LeavesAnOpenPageAsItIs()
    {
        IPage open = await site.Open("/walk", prepare: "const Socket = WebSocket; window.WebSocket = class extends Socket { constructor(...a) { super(...a); window.line = this; } };");
        IPage beside = await open.Context.NewPageAsync();
        await beside.GotoAsync(site.Address + "/walk?language=es");
        await Expect(beside.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await open.Keyboard.PressAsync("ArrowLeft");
        await Expect(open.GetByText("stop 2 of")).ToBeVisibleAsync();
        await open.EvaluateAsync("() => { window.before = window.line; window.line.close(); }");
        await open.WaitForFunctionAsync("() => window.line !== window.before && window.line.readyState === 1 && !document.querySelector('.components-reconnect-show')");
        await open.Keyboard.PressAsync("ArrowLeft");
        await Expect(open.GetByText("stop 3 of")).ToBeVisibleAsync();
    }

    /// <summary>A phone is spoken to in its own language, in sentences that its script puts together.</summary>
    [Fact]
    public async Task Phone_InSpanish_WalksDownAndAnswers()
    {
        IPage phone = await site.Open("/walkdown/?language=es", 390, 844);
        await Expect(phone.Locator("html")).ToHaveAttributeAsync("lang", "es");
        await phone.GetByLabel("Quién recorre").FillAsync("Ana");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Comenzar" }).ClickAsync();
        await Expect(phone.Locator("#where")).ToContainTextAsync("parada 1 de");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Adelante" }).ClickAsync();
        await Expect(phone.Locator("#where")).ToContainTextAsync("parada 2 de");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Lugares" }).ClickAsync();
        await Expect(phone.GetByRole(AriaRole.Dialog)).ToContainTextAsync("Cerrar");
        await Site.Keep(phone, "walkdown-es");
        IPage answer = await site.Open("/answer?language=es", 390, 844);
        await Expect(answer.Locator("#asks")).ToHaveTextAsync("Por el momento no se pregunta nada.");
    }

    private static async Task Begin(IPage page, string dialog, string situation, string begin, string name)
    {
        await page.Keyboard.PressAsync("s");
        ILocator open = page.GetByRole(AriaRole.Dialog, new() { Name = dialog });
        await open.GetByLabel(situation).SelectOptionAsync(name);
        await open.GetByRole(AriaRole.Button, new() { Name = begin }).ClickAsync();
    }
}
