using System.Net;
using Microsoft.AspNetCore.Builder;
using Sightglass.Basics.Diagnostics;
using Sightglass.Plant.Calculators.Sheets;
using Sightglass.Web.Host;

namespace Sightglass.Web.Tests;

/// <summary>Calculators as pages: from an address alone, before any script runs.</summary>
public sealed class CalculatorPageTests(CalculatorPageTests.Served served) : IClassFixture<CalculatorPageTests.Served>
{
    /// <summary>Every calculator is listed, and its page works with what it begins with: no sentence stands at a field, the plot is there, and source and caution are told.</summary>
    [Fact]
    public async Task Get_EveryCalculatorOfTheList_WorksAsItBegins()
    {
        string list = await Get("/calculators");
        foreach (CalculatorSheet sheet in CalculatorLibrary.All)
        {
            string address = "calculators/" + sheet.Name.Replace(' ', '-');
            Assert.Contains($"href=\"{address}\"", list, StringComparison.Ordinal);
            string page = await Get("/" + address);
            Assert.DoesNotContain("calc-wrong", page, StringComparison.Ordinal);
            Assert.DoesNotContain("calc-none", page, StringComparison.Ordinal);
            Assert.Contains("class=\"c-share\"", page, StringComparison.Ordinal);
            Assert.Contains(sheet.Caution, page, StringComparison.Ordinal);
            Assert.Contains(sheet.Source[1..], page, StringComparison.Ordinal);
        }
    }

    /// <summary>The address holds all that was put in, also from one person to another.</summary>
    [Fact]
    public async Task Get_AnAddressWithValues_GivesTheirResult()
    {
        string page = await Get("/calculators/stopping?speed=79+mph&deceleration=0.9+m/s%5E2&dead=1+s&build-up=4+s&in=us");
        Assert.Contains("2\u202F619\u202Fft", page, StringComparison.Ordinal);
        Assert.Contains("<b>79 mph</b>", page, StringComparison.Ordinal);
        Assert.Contains("(4 s)</b>²", page, StringComparison.Ordinal);
    }

    /// <summary>What is wrong stands at its field, tied to it, in the words of the command.</summary>
    [Fact]
    public async Task Get_AWrongAndAMissingValue_SayItAtTheirFields()
    {
        List<CalculatorRefusal> refused = [];
        Calculation.Of(CalculatorLibrary.Find("stopping")!, new Dictionary<string, string> { ["speed"] = "79" }, refused);
        string page = await Get("/calculators/stopping?speed=79");
        Assert.Contains(Assert.Single(refused, r => r.Input == "speed").Sentence, page, StringComparison.Ordinal);
        Assert.Contains(Assert.Single(refused, r => r.Input == "deceleration").Sentence, page, StringComparison.Ordinal);
        Assert.Contains("aria-describedby=\"in-speed-is in-speed-wrong\"", page, StringComparison.Ordinal);
        Assert.Equal(2, page.Split("aria-invalid=\"true\"").Length - 1);
        Assert.DoesNotContain("c-share", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Get_ValuesWithoutAnAnswer_SaysWhy() =>
        Assert.Contains("it never stops", await Get("/calculators/stopping-on-a-grade?speed=60+mph&deceleration=0.1+m/s%5E2&grade=-5+%25"), StringComparison.Ordinal);

    /// <summary>The demo's battery has 420 Ah and its port takes 300 US gal/min; a calculator that the book knows nothing for begins with its own example.</summary>
    [Fact]
    public async Task Get_ACalculatorOfWhatTheBookKnows_BeginsWithIt()
    {
        Assert.Contains("value=\"30 mOhm\"", await Get("/calculators/battery"), StringComparison.Ordinal);
        Assert.Contains("value=\"79 mph\"", await Get("/calculators/stopping"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Get_ACalculatorThatIsNotThere_LeadsToTheList() => Assert.Contains("There is no such calculator", await Get("/calculators/none"), StringComparison.Ordinal);

    private async Task<string> Get(string path) => WebUtility.HtmlDecode(await served.Client.GetStringAsync(new Uri(path, UriKind.Relative)));

    /// <summary>The pages of the demo book.</summary>
    public sealed class Served : IAsyncLifetime
    {
        private WebApplication? _app;

        public HttpClient Client { get; private set; } = new();

        public async ValueTask InitializeAsync()
        {
            _app = WebHost.Build(new(Shelves.Folder("curlew"), 0) { Clock = new ManualClock() }, new DiagnosticList())!;
            await _app.StartAsync();
            Client = new() { BaseAddress = new(WebHost.Address(_app)) };
        }

        public async ValueTask DisposeAsync()
        {
            Client.Dispose();
            if (_app is not null)
            {
                await _app.StopAsync();
                await _app.DisposeAsync();
            }
        }
    }
}
