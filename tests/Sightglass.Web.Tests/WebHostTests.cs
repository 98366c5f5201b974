using System.Net;
using Microsoft.AspNetCore.Builder;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Host;

namespace Sightglass.Web.Tests;

public sealed class WebHostTests(WebHostTests.Served served) : IClassFixture<WebHostTests.Served>
{
    [Theory]
    [InlineData("/walk", "text/html")]
    [InlineData("/machine", "text/html")]
    [InlineData("/rules", "text/html")]
    [InlineData("/look/tokens.css", "text/css")]
    [InlineData("/look/fonts/source-serif-4-latin-opsz-normal.woff2", "font/woff2")]
    [InlineData("/assets/pages.js", "text/javascript")]
    [InlineData("/assets/paper.css", "text/css")]
    [InlineData("/_framework/blazor.web.js", "text/javascript")]
    public async Task Get_WhatPagesNeed_ComesFromTheProgram(string path, string type)
    {
        HttpResponseMessage answer = await served.Client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains(answer.Headers.GetValues("Content-Security-Policy"), p => p.Contains("script-src 'self';", StringComparison.Ordinal));
    }

    /// <summary>What happens if it fails: from the models, as one of the things that it holds, or told by the book and said to be told.</summary>
    [Theory]
    [InlineData("light breakers", "As one of these fails", "Told by the book")]
    [InlineData("first aid box", "Told by the book", "As one of these fails")]
    public async Task Get_WalkAtAnItem_TellsWhatHappensIfItFails(string item, string says, string not)
    {
        string page = await served.Client.GetStringAsync(new Uri($"/walk?at={Uri.EscapeDataString(item)}", UriKind.Relative));
        Assert.Contains("What happens if it fails?", page, StringComparison.Ordinal);
        Assert.Contains(says, page, StringComparison.Ordinal);
        Assert.DoesNotContain(not, page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/walk")]
    [InlineData("/machine")]
    [InlineData("/rules")]
    [InlineData("/lesson?shows=%3Cscript%3E&people=-5&stations=99&depth=7&audience=nobody")]
    [InlineData("/rules?show=229.59(a)")]
    [InlineData("/calculators")]
    [InlineData("/calculators/holding?mass=%3Cscript%3E")]
    public async Task Get_Page_NamesNothingElsewhere(string path)
    {
        string page = await served.Client.GetStringAsync(new Uri(path, UriKind.Relative));
        Assert.Contains("<main", page, StringComparison.Ordinal);
        Assert.Contains("<h1", page, StringComparison.Ordinal);
        Assert.DoesNotContain("https://", page, StringComparison.Ordinal);
        Assert.DoesNotContain("src=\"http", page, StringComparison.Ordinal);
    }

    /// <summary>The lesson of an address as files: what the page says, wherever it is asked for.</summary>
    [Fact]
    public async Task Get_LessonAsFiles_SaysWhatThePageSays()
    {
        const string Asks = "?shows=fuel%20for%20a%20crew&people=10&stations=3";
        byte[] pdf = await served.Client.GetByteArrayAsync(new Uri("/lesson/paper.pdf" + Asks, UriKind.Relative));
        Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
        string said = await served.Client.GetStringAsync(new Uri("/lesson/said.vtt" + Asks, UriKind.Relative));
        Assert.StartsWith("WEBVTT", said, StringComparison.Ordinal);
        Assert.Contains("Forward sight glass, right", said, StringComparison.Ordinal);
        Assert.NotEqual(said, await served.Client.GetStringAsync(new Uri("/lesson/said.vtt?shows=all&depth=know", UriKind.Relative)));
        Assert.Equal(HttpStatusCode.NotFound, (await served.Client.GetAsync(new Uri("/lesson/paper.pdf?size=stamp", UriKind.Relative))).StatusCode);
    }

    /// <summary>Every row with its verdict, one in full, and who decides; a paragraph that is not there shows the first.</summary>
    [Fact]
    public async Task Get_Rules_ShowsRowsAndTheOneAskedFor()
    {
        string page = await served.Client.GetStringAsync(new Uri("/rules?show=229.59(a)", UriKind.Relative));
        Assert.Contains("2015 annual edition", page, StringComparison.Ordinal);
        Assert.Contains("After the pressure has been reduced to 60 % of the greatest pressure.", page, StringComparison.Ordinal);
        Assert.Contains("229.49(a)(1)", page, StringComparison.Ordinal);
        Assert.Contains("qualified people decide", page, StringComparison.Ordinal);
        Assert.Contains("<h2", await served.Client.GetStringAsync(new Uri("/rules?show=%3Cscript%3E", UriKind.Relative)), StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", await served.Client.GetStringAsync(new Uri("/rules?show=%3Cscript%3Ealert", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/photo/book.yaml")]
    [InlineData("/photo/..%2f..%2fREADME.md")]
    [InlineData("/assets/none.js")]
    [InlineData("/look/..%2ftokens.css")]
    public async Task Get_WhatIsNotOffered_NotFound(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await served.Client.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);

    [Fact]
    public void Address_Started_IsThisComputerAlone() => Assert.StartsWith("http://127.0.0.1:", WebHost.Address(served.App), StringComparison.Ordinal);

    [Fact]
    public void Build_FolderWithoutABook_ErrorsAndNoHost()
    {
        DiagnosticList found = new();
        Assert.Null(WebHost.Build(new(Path.GetTempPath() + "no-such-book", 0), found));
        Assert.True(found.HasErrors);
    }

    /// <summary>The pages of the demo book; they are only read here.</summary>
    public sealed class Served : IAsyncLifetime
    {
        public WebApplication App { get; private set; } = null!;

        public HttpClient Client { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            App = WebHost.Build(new(Shelves.Folder("curlew"), 0) { Clock = new ManualClock(), RuleFolders = [Path.Combine(Shelves.Folder("curlew"), "..", "..", "rules", "us-cfr49")] }, new DiagnosticList())!;
            await App.StartAsync();
            Client = new() { BaseAddress = new(WebHost.Address(App)) };
        }

        public async ValueTask DisposeAsync()
        {
            Client.Dispose();
            await App.StopAsync();
            await App.DisposeAsync();
        }
    }
}
