using System.Net;
using System.Net.NetworkInformation;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Paper.Vectors;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Share;

namespace Sightglass.Web.Tests;

/// <summary>What a phone on the network reaches, before and after it is paired.</summary>
public sealed class ShareTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-share-").FullName;

    /// <summary>One encoder for paper, pages and the terminal: what the terminal shows are the modules that a paper draws, with the empty ones round them.</summary>
    [Fact]
    public void QrPicture_OfAnAddress_IsTheCodeOfThePapers()
    {
        const string Address = "https://192.168.1.20:5001/walkdown/pair?code=1234";
        string[] rows = [.. QrPicture.Text(Address).Replace("\u001b[30;47m", "", StringComparison.Ordinal).Replace("\u001b[0m", "", StringComparison.Ordinal).TrimEnd('\n').Split('\n')
            .SelectMany(l => new[] { string.Concat(l.Select(c => c is '█' or '▀' ? '1' : '0')), string.Concat(l.Select(c => c is '█' or '▄' ? '1' : '0')) })];
        string[] code = [.. QrDrawing.Modules(Address).Select(r => "0000" + string.Concat(r.Select(dark => dark ? '1' : '0')) + "0000")];
        Assert.Equal(code, rows[4..(4 + code.Length)]);
        Assert.All(rows[..4].Concat(rows[(4 + code.Length)..]), r => Assert.DoesNotContain('1', r));
        Assert.DoesNotContain("QRCoder", typeof(QrPicture).Assembly.GetReferencedAssemblies().Select(a => a.Name));
    }

    [Fact]
    public async Task Phone_NotPaired_ReachesNothingButThePairing()
    {
        await using WebApplication app = await Start();
        using HttpClient phone = Phone(app);
        foreach (string path in new[] { "/", "/walk", "/machine", "/proposals", "/proposals/phones", "/assets/pages.js", "/_blazor/negotiate", "/_framework/blazor.web.js", "/photo/x.jpg", "/proposals/file/x", "/walkdownx", "/WALKDOWN/../walk" })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await phone.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);
        }

        foreach (string path in new[] { "/walkdown/sheet.json", "/walkdown/page.js", "/walkdown/worker.js", "/walkdown/look/../sheet.json" })
        {
            Assert.Equal(HttpStatusCode.Unauthorized, (await phone.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);
        }

        // What anybody in the room may say is without a name, and bounded.
        foreach (string path in new[] { "/answer", "/answer/answer.js", "/answer/pages.css", "/answer/look/tokens.css", "/answer/now" })
        {
            Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);
        }

        foreach (string path in new[] { "/answer/../walk", "/answers", "/answer/look/../../machine", "/answer/look/..%2f..%2fbook.yaml" })
        {
            Assert.Equal(HttpStatusCode.NotFound, (await phone.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);
        }

        using StringContent json = new("{}", Encoding.UTF8, "application/json");
        Assert.Equal(HttpStatusCode.Unauthorized, (await phone.PostAsync(new Uri("/walkdown/take", UriKind.Relative), json)).StatusCode);
        HttpResponseMessage sent = await phone.GetAsync(new Uri("/walkdown/", UriKind.Relative));
        Assert.Equal("/walkdown/pair", sent.Headers.Location?.OriginalString);
        string pair = await phone.GetStringAsync(new Uri("/walkdown/pair?code=%22%3E%3Cscript%3E12", UriKind.Relative));
        Assert.Contains("value=\"12\"", pair, StringComparison.Ordinal);
        Assert.Contains(Sharing(app).Fingerprint, pair, StringComparison.Ordinal);
    }

    /// <summary>A phone that is not paired opens what was printed, also after the next start, and nothing that was not.</summary>
    [Fact]
    public async Task Phone_WithThePrintedCode_OpensThatPaperAndNoOther()
    {
        Uri lesson;
        await using (WebApplication app = await Start())
        {
            lesson = Printed(app, "?shows=all&people=4&audience=&size=a4")!;
            Assert.Equal(Sharing(app).Address!.Authority, lesson.Authority);
            Assert.DoesNotContain("size", lesson.Query, StringComparison.Ordinal);
            using HttpClient phone = Phone(app);
            HttpResponseMessage answer = await phone.GetAsync(new Uri(lesson.PathAndQuery, UriKind.Relative));
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            string page = await answer.Content.ReadAsStringAsync();
            Assert.Contains("Horn", page, StringComparison.Ordinal);
            Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
            foreach (string other in new[] { lesson.PathAndQuery.Replace("people=4", "people=5", StringComparison.Ordinal), lesson.PathAndQuery.Split("&seal=")[0], lesson.PathAndQuery + "x", lesson.PathAndQuery + "&kept=1", "/paper/walk?" + lesson.Query[1..], "/paper", "/paper/", "/lesson" + lesson.Query, "/lesson/paper.pdf" + lesson.Query })
            {
                Assert.Equal(HttpStatusCode.NotFound, (await phone.GetAsync(new Uri(other, UriKind.Relative))).StatusCode);
            }
        }

        await using WebApplication again = await Start();
        using HttpClient same = Phone(again);
        Assert.Equal(HttpStatusCode.OK, (await same.GetAsync(new Uri(lesson.PathAndQuery, UriKind.Relative))).StatusCode);
    }

    /// <summary>Only a phone that reaches this computer can use a code.</summary>
    [Fact]
    public async Task Paper_NotShared_CarriesNoCode()
    {
        await using WebApplication app = WebHost.Build(new(Shelves.Folder("smallest"), 0), [])!;
        await app.StartAsync();
        Assert.Null(Printed(app, "?shows=all"));
    }

    [Fact]
    public async Task Phone_Paired_ReachesTheWalkDownAloneAndStaysPaired()
    {
        string cookie;
        X509Certificate2 certificate;
        await using (WebApplication app = await Start())
        {
            using HttpClient phone = Phone(app);
            string code = Sharing(app).Pairing.Code;
            HttpResponseMessage paired = await Try(phone, $"{code[..4]} {code[4..]}");
            Assert.Equal(HttpStatusCode.Redirect, paired.StatusCode);
            cookie = Assert.Single(paired.Headers.GetValues("Set-Cookie"));
            Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("secure", cookie, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(HttpStatusCode.Forbidden, (await Try(phone, code)).StatusCode); // once
            phone.DefaultRequestHeaders.Add("Cookie", cookie.Split(';')[0]);
            Assert.Equal(HttpStatusCode.OK, (await phone.GetAsync(new Uri("/walkdown/sheet.json", UriKind.Relative))).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await phone.GetAsync(new Uri("/walk", UriKind.Relative))).StatusCode);
            Assert.Equal(HttpStatusCode.NotFound, (await phone.GetAsync(new Uri("/proposals/phones", UriKind.Relative))).StatusCode);
            using StringContent nothing = new("{}", Encoding.UTF8, "application/json");
            Assert.Equal(HttpStatusCode.BadRequest, (await phone.PostAsync(new Uri("/walkdown/take", UriKind.Relative), nothing)).StatusCode);
            using StringContent form = new("{}", Encoding.UTF8, "text/plain");
            Assert.Equal(HttpStatusCode.UnsupportedMediaType, (await phone.PostAsync(new Uri("/walkdown/take", UriKind.Relative), form)).StatusCode);
            certificate = Sharing(app).Certificate;
            Assert.True(certificate.HasPrivateKey);
            certificate = X509CertificateLoader.LoadCertificate(certificate.RawData);
        }

        Assert.DoesNotContain(cookie.Split('=')[1].Split(';')[0], File.ReadAllText(Path.Combine(_folder, "share", "phones.txt")), StringComparison.Ordinal);
        await using WebApplication again = await Start();
        Assert.Equal(certificate.Thumbprint, Sharing(again).Certificate.Thumbprint);
        using HttpClient same = Phone(again);
        same.DefaultRequestHeaders.Add("Cookie", cookie.Split(';')[0]);
        Assert.Equal(HttpStatusCode.OK, (await same.GetAsync(new Uri("/walkdown/sheet.json", UriKind.Relative))).StatusCode);
    }

    /// <summary>RFC 5280, 4.2.1.6 and 4.2.1.9; phones refuse a certificate of an own authority that is valid for more than 825 days (from memory).</summary>
    [Fact]
    public void Certificate_OfThisComputer_CanBeTrustedByAPhone()
    {
        DateTimeOffset now = new(2026, 11, 26, 0, 0, 0, TimeSpan.Zero);
        IPAddress[] addresses = [IPAddress.Parse("192.0.2.7")];
        using X509Certificate2 made = ShareCertificate.Open(_folder, addresses, now);
        Assert.True(made.Extensions.OfType<X509BasicConstraintsExtension>().Single().CertificateAuthority);
        Assert.Equal(addresses, made.Extensions.OfType<X509SubjectAlternativeNameExtension>().Single().EnumerateIPAddresses());
        Assert.InRange((made.NotAfter - made.NotBefore).TotalDays, 700, 825);
        Assert.Equal(made.Thumbprint, ShareCertificate.Open(_folder, addresses, now.AddDays(700)).Thumbprint);
        Assert.NotEqual(made.Thumbprint, ShareCertificate.Open(_folder, addresses, now.AddDays(790)).Thumbprint);
        Assert.NotEqual(made.Thumbprint, ShareCertificate.Open(_folder, [.. addresses, IPAddress.Parse("192.0.2.8")], now).Thumbprint);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Path.Combine(_folder, "certificate.pfx")));
        }
    }

    [Fact]
    public void Pairing_GuessedAt_WaitsAndChangesTheCode()
    {
        WallClock clock = new();
        Pairing pairing = new(null, clock);
        string code = pairing.Code, wrong = code == "00000000" ? "11111111" : "00000000";
        int changes = 0;
        pairing.Changed += () => changes++;
        for (int i = 0; i < 5; i++)
        {
            Assert.Equal(new PairAnswer(null, MustWait: false), pairing.Try(wrong));
        }

        Assert.Equal(1, changes);
        Assert.NotEqual(code, pairing.Code);
        Assert.True(pairing.Try(pairing.Code).MustWait); // also the right one
        clock.Now += TimeSpan.FromSeconds(61);
        Assert.NotNull(pairing.Try(pairing.Code).Token);
        string old = pairing.Code;
        clock.Now += TimeSpan.FromMinutes(31);
        Assert.Null(pairing.Try(old).Token);
        Assert.False(pairing.IsPaired(null));
        Assert.False(pairing.IsPaired(""));
        Assert.False(pairing.IsPaired("0"));
    }

    [Fact]
    public async Task Pages_NotShared_ListenOnThisComputerOnly()
    {
        await using WebApplication app = WebHost.Build(new(Shelves.Folder("smallest"), 0), [])!;
        await app.StartAsync();
        int port = new Uri(WebHost.Address(app)).Port;
        Assert.Null(app.Services.GetRequiredService<ShareDesk>().Sharing);
        Assert.All(IPGlobalProperties.GetIPGlobalProperties().GetActiveTcpListeners().Where(l => l.Port == port), l => Assert.True(IPAddress.IsLoopback(l.Address)));
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static Sharing Sharing(WebApplication app) => app.Services.GetRequiredService<ShareDesk>().Sharing!;

    private async Task<WebApplication> Start()
    {
        string book = Path.Combine(_folder, "heron");
        Directory.CreateDirectory(book);
        await File.WriteAllTextAsync(Path.Combine(book, "book.yaml"), "book: Heron\nplaces: { yard: { x: 1 m, y: 2.4 m, z: 0 m } }\nitems: { horn: { places: [yard], for: Warns., normal: Loud. } }\n");
        WebApplication app = WebHost.Build(new(book, 0) { DataFolder = _folder, SharePort = 0 }, [])!;
        await app.StartAsync();
        return app;
    }

    private static Uri? Printed(WebApplication app, string query)
    {
        DefaultHttpContext context = new();
        context.Request.QueryString = new(query);
        MachineRoom room = app.Services.GetRequiredService<MachineRoom>();
        string? address = PhonePapers.OfLesson(app.Services.GetRequiredService<ShareDesk>(), app.Services.GetRequiredService<TonguesOffered>(), room.Shelf.BookOf(null, null), context.Request);
        return address is null ? null : new(address);
    }

    /// <summary>Over TLS, trusting the one certificate of this computer and no other.</summary>
    private static HttpClient Phone(WebApplication app)
    {
        string trusted = Sharing(app).Certificate.Thumbprint;
        HttpClientHandler handler = new() { AllowAutoRedirect = false, UseCookies = false, ServerCertificateCustomValidationCallback = (_, c, _, _) => c?.Thumbprint == trusted };
        return new(handler) { BaseAddress = new UriBuilder(Sharing(app).Address!) { Host = "127.0.0.1", Path = "/" }.Uri };
    }

    private static async Task<HttpResponseMessage> Try(HttpClient phone, string code)
    {
        using FormUrlEncodedContent form = new([new("code", code)]);
        return await phone.PostAsync(new Uri("/walkdown/pair", UriKind.Relative), form);
    }

    private sealed class WallClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 11, 26, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
