using System.Collections.Concurrent;
using System.Net;
using System.Reflection;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Book.Rules;
using Sightglass.Cards;
using Sightglass.Paper;
using Sightglass.Plant.Rules;
using Sightglass.Storage.Notes;
using Sightglass.Training.Lessons;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Room;
using Sightglass.Web.Share;

namespace Sightglass.Web.Tests;

/// <summary>Every page in every language: what a person reads comes from the resources or from the book, and each browser is answered in its own language.</summary>
public sealed partial class SpokenPagesTests(SpokenPagesTests.Served served) : IClassFixture<SpokenPagesTests.Served>
{
    /// <summary>What stands on pages without being said or being of the book, with the reason.</summary>
    private static readonly Dictionary<string, string> s_same = new(StringComparer.Ordinal)
    {
        ["Sightglass"] = "the program's name",
        ["A2"] = "a sheet's name in ISO 216",
        ["A3"] = "a sheet's name in ISO 216",
        ["English"] = "a language by its own name",
        ["Español"] = "a language by its own name",
        ["en"] = "a language by its code",
        ["es"] = "a language by its code",
        ["GET /answer"] = "an address",
        ["bets:"] = "what is written into a book",
        ["rules"] = "a folder's name",
        ["sightglass walkdown --take FILE"] = "what is typed into a terminal",
        ["sightglass walkdown --html FILE"] = "what is typed into a terminal",
        ["docs/guide/a-train.md"] = "a file's name",
        ["--room"] = "what is typed into a terminal",
        ["--share"] = "what is typed into a terminal",
    };

    [Theory]
    [InlineData("/walk")]
    [InlineData("/walk?train=night mail&at=brake platform, right")]
    [InlineData("/machine")]
    [InlineData("/machine?system=brake")]
    [InlineData("/lesson")]
    [InlineData("/bets")]
    [InlineData("/bets/table?of=none")]
    [InlineData("/papers")]
    [InlineData("/notes")]
    [InlineData("/proposals")]
    [InlineData("/proposals/phones")]
    [InlineData("/rules")]
    [InlineData("/calculators")]
    [InlineData("/calculators/wheel-loads")]
    [InlineData("/calculators/stopping?speed=79&deceleration=fast&build-up=4 psi")]
    [InlineData("/calculators/none")]
    [InlineData("/routes")]
    [InlineData("/routes/Saltmarsh%20to%20Windlass")]
    [InlineData("/routes/Saltmarsh%20to%20Windlass?train=local%20train&rail=wet&stop-at=12%20mi")]
    [InlineData("/routes/none")]
    [InlineData("/searches")]
    [InlineData("/searches/it%20does%20not%20load")]
    [InlineData("/searches/none")]
    [InlineData("/recordings")]
    [InlineData("/recordings/stopped%20on%20the%20grade")]
    [InlineData("/recordings/map/file?of=recordings/stopped-on-the-grade.csv")]
    [InlineData("/recordings/map/file?of=none")]
    [InlineData("/recordings/none")]
    [InlineData("/trials")]
    [InlineData("/trials/empty-a-leaking-compartment")]
    [InlineData("/room/debrief/99")]
    [InlineData("/trains")]
    [InlineData("/trains?train=night%20mail&grade=1.5")]
    [InlineData("/room")]
    [InlineData("/not-here")]
    [InlineData("/walkdown/")]
    [InlineData("/walkdown/pair")]
    [InlineData("/answer")]
    public async Task Page_Marked_SaysNothingThatCannotBeTranslated(string path)
    {
        string page = await Get(path, Tongue.Marked.Code);
        Assert.Contains("lang=\"qps\"", page, StringComparison.Ordinal);
        Assert.Contains("&#x27E6;", page.Replace("⟦", "&#x27E6;", StringComparison.Ordinal), StringComparison.Ordinal);
        string[] unsaid = [.. Unsaid(page)];
        Assert.True(unsaid.Length == 0, string.Join('\n', unsaid));
    }

    /// <summary>Somebody works in a drill, with all that the instructor has of them.</summary>
    [Fact]
    public async Task Room_WithADrillUnderWay_SaysNothingThatCannotBeTranslated()
    {
        TrainingRoom room = served.App.Services.GetRequiredService<TrainingRoom>();
        Assert.Null(room.Join("007", out Seat? seat, out _));
        Assert.Null(room.Join("008", out _, out _));
        Assert.Null(room.Begin("a compartment leaks at a stand", 1, 0, [seat!]));
        string page = await Get("/room", Tongue.Marked.Code);
        Assert.Contains("deep-marks", page, StringComparison.Ordinal);
        string[] unsaid = [.. Unsaid(page)];
        Assert.True(unsaid.Length == 0, string.Join('\n', unsaid));
        Assert.Null(room.Leave(seat!));
    }

    /// <summary>The check itself: a page in English is full of texts that it would tell.</summary>
    [Fact]
    public async Task Page_NotMarked_IsToldByTheCheck() => Assert.True(Unsaid(await Get("/notes", "en")).Skip(20).Any());

    [Theory]
    [InlineData(null, "en", "Find by name")]
    [InlineData("en", "en", "Find by name")]
    [InlineData("es", "es", "Buscar por nombre")]
    [InlineData("xx", "en", "Find by name")]
    public async Task Page_OfABrowser_IsInItsLanguage(string? cookie, string language, string words)
    {
        string page = await Get("/walk", cookie);
        Assert.Contains($"<html lang=\"{language}\"", page, StringComparison.Ordinal);
        Assert.Contains(words, page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Language_AskedForInAnAddress_IsKeptAndLeadsToTheSamePage()
    {
        HttpResponseMessage answer = await served.Client.GetAsync(new Uri("/walk?at=nose&language=es&train=night%20mail", UriKind.Relative));
        Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
        Assert.Equal("/walk?at=nose&train=night%20mail", answer.Headers.Location!.OriginalString);
        Assert.StartsWith("sightglass-language=es;", Assert.Single(answer.Headers.GetValues("Set-Cookie")), StringComparison.Ordinal);
    }

    /// <summary>Whatever an address says, it leads nowhere else; a language that is not there is no language.</summary>
    [Theory]
    [InlineData("//example.org/?language=es", "/example.org/")]
    [InlineData("/walk?language=zz", null)]
    public async Task Language_AskedForOddly_LeadsNowhereElse(string path, string? to)
    {
        HttpResponseMessage answer = await served.Client.GetAsync(new Uri(served.Client.BaseAddress!.AbsoluteUri.TrimEnd('/') + path));
        Assert.Equal(to, answer.Headers.Location?.OriginalString);
    }

    /// <summary>What the scripts say is data of their page; in themselves they have no sentence.</summary>
    [Fact]
    public async Task Scripts_OfPhonesAndPages_SayOnlyWhatTheirPageHolds()
    {
        foreach (string path in new[] { "/walkdown/", "/answer" })
        {
            string words = Words().Match(await Get(path, Tongue.Marked.Code)).Groups[1].Value;
            Assert.All(JsonSerializer.Deserialize<Dictionary<string, string>>(words)!.Values, w => Assert.StartsWith("⟦", w, StringComparison.Ordinal));
        }

        foreach (string script in WalkDownPaper.ServedScripts.Select(s => "/walkdown/" + s).Concat(["/answer/answer.js", "/assets/aloud.js", "/assets/pages.js"]))
        {
            string code = Comment().Replace(await Get(script, null), "");
            Assert.Empty(Sentence().Matches(code).Select(m => $"{script}: {m.Value}"));
            Assert.All(Asked().Matches(code).Select(m => m.Groups[1].Value), id => Assert.Contains(id, AllIds(), StringComparer.Ordinal));
        }
    }

    private static string[]? s_ids;

    private string[] AllIds() => s_ids ??= [.. new[] { "/walkdown/", "/answer" }.SelectMany(p => JsonSerializer.Deserialize<Dictionary<string, string>>(Words().Match(Get(p, null).GetAwaiter().GetResult()).Groups[1].Value)!.Keys)];

    private async Task<string> Get(string path, string? cookie)
    {
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(path, UriKind.Relative));
        if (cookie is not null)
        {
            request.Headers.Add("Cookie", "sightglass-language=" + cookie);
        }

        HttpResponseMessage answer = await served.Client.SendAsync(request);
        return await answer.Content.ReadAsStringAsync();
    }

    /// <summary>Texts and described attributes with letters that are neither said nor of the book. Drawings and papers are other projects', and tested there.</summary>
    private static IEnumerable<string> Unsaid(string page)
    {
        string html = Foreign().Replace(page, "").Replace("&#x27E6;", "⟦", StringComparison.Ordinal).Replace("&#x27E7;", "⟧", StringComparison.Ordinal);
        for (string before = ""; before != html;)
        {
            before = html;
            html = Said().Replace(html, "");
        }

        foreach (string piece in Texts().Matches(html).Select(m => m.Groups["text"].Value))
        {
            string text = WebUtility.HtmlDecode(piece).Trim(' ', '\n', '·');
            if (text.Any(char.IsLetter) && !s_same.ContainsKey(text) && !s_book.Value.Contains(text) && Rest(text).Any(char.IsLetter))
            {
                yield return text;
            }
        }
    }

    /// <summary>Said by projects below, whose own tests hold them; listed until they are marked as well.</summary>
    private static IEnumerable<string> Below() => [LessonWords.Decide, RuleWords.Decide, "at most", .. Enum.GetValues<RuleConfidence>().Select(RuleWords.Confidence)];

    /// <summary>What is left of a text without those of the book that are in it, the longest first.</summary>
    private static string Rest(string text)
    {
        foreach (string known in s_longFirst.Value)
        {
            text = text.Replace(known, "", StringComparison.OrdinalIgnoreCase);
        }

        return Unit().Replace(text, "");
    }

    private static readonly Lazy<HashSet<string>> s_book = new(() =>
    {
        HashSet<string> found = new(StringComparer.OrdinalIgnoreCase);
        HashSet<object> seen = new(ReferenceEqualityComparer.Instance);
        BookShelf shelf = Shelves.Curlew;
        ClassBook[] books = [.. shelf.Book.Trains.Keys.Append("").Select(t => shelf.BookOf(null, t))];
        foreach (ClassBook book in books)
        {
            Collect(book, found, seen);
        }

        // A title stands in the text, whichever train the card is read for.
        foreach (var card in books.SelectMany(b => b.CardTexts.Select(t => (Book: b, Text: t))).GroupBy(c => c.Text.Path))
        {
            found.UnionWith(card.Select(c => CardReader.Read(c.Text, c.Book, [])?.Title).OfType<string>().Take(1));
        }

        found.UnionWith(Below());
        Collect(RuleReader.Read(Path.Combine(shelf.Folder, "..", "..", "rules", "us-cfr49"), [])!, found, seen);
        return found;
    });

    private static readonly Lazy<string[]> s_longFirst = new(() => [.. s_book.Value.Where(t => t.Length > 2).OrderByDescending(t => t.Length)]);

    private static readonly ConcurrentDictionary<Type, PropertyInfo?> s_default = new();

    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> s_properties = new();

    private static void Collect(object? value, HashSet<string> found, HashSet<object> seen)
    {
        if (value is string text)
        {
            found.Add(text.Trim());
        }
        else if (value is not null && s_default.GetOrAdd(value.GetType(), t => t.GetProperty("IsDefault"))?.GetValue(value) is true)
        {
            return; // an array that nobody has made
        }
        else if (value is System.Collections.IEnumerable all)
        {
            foreach (object? one in all)
            {
                Collect(one, found, seen);
            }
        }
        else if (value is not null && (value.GetType().Namespace?.StartsWith("Sightglass", StringComparison.Ordinal) == true || value.GetType().Name.StartsWith("KeyValuePair", StringComparison.Ordinal)) && !value.GetType().IsEnum && seen.Add(value))
        {
            foreach (PropertyInfo property in s_properties.GetOrAdd(value.GetType(), t => [.. t.GetProperties().Where(p => p.GetIndexParameters().Length == 0 && !p.GetMethod!.IsStatic && p.Name != nameof(ClassBook.Languages))]))
            {
                Collect(property.GetValue(value), found, seen);
            }
        }
    }

    [GeneratedRegex("""<svg.*?</svg>|<script.*?</script>|<style.*?</style>|<article class="paper.*?</article>|<ul class="legend">.*?</ul>|<td class="(?:num|lim)">.*?</td>|<kbd>.</kbd>|<p class="num[^"]*"[^>]*>.*?</p>|<span class="num">.*?</span>|<code>.*?</code>|<(?<no>[a-z]+)[^>]* translate="no"[^>]*>.*?</\k<no>>|placeholder="\d+ [^" ]+"|<!--.*?-->""", RegexOptions.Singleline)]
    private static partial Regex Foreign();

    [GeneratedRegex(""">(?<text>[^<]+)<|(?:aria-label|title|placeholder|alt|data-begin|data-stop|data-on)="(?<text>[^"]*)" """, RegexOptions.IgnorePatternWhitespace)]
    private static partial Regex Texts();

    [GeneratedRegex("⟦[^⟦⟧]*⟧")]
    private static partial Regex Said();

    [GeneratedRegex(@"\b(?:psi|US.gal|gal|mm|in|ft|mph|m|cfm|rpm|V|A|min|s|h|L|t|kN|lbf|lb|short.ton|kg)\b")]
    private static partial Regex Unit();

    [GeneratedRegex("""<script type="application/json" id="words">(.*?)</script>""", RegexOptions.Singleline)]
    private static partial Regex Words();

    [GeneratedRegex(@"^\s*//.*$|/\*.*?\*/", RegexOptions.Multiline)]
    private static partial Regex Comment();

    /// <summary>A literal that begins as a sentence does and goes on in small letters, or has words in it.</summary>
    [GeneratedRegex("""['"`][A-Z][a-z]+[ .…?!:][^'"`]*['"`]|['"`][a-z]+ [a-z]+ [a-z]+[^'"`{]*['"`]""")]
    private static partial Regex Sentence();

    [GeneratedRegex(@"(?<![.\w])text\('(\w+)'")]
    private static partial Regex Asked();

    /// <summary>The demo book, shared and with a question on its notes, in one more language than there are.</summary>
    public sealed class Served : IAsyncLifetime
    {
        private readonly string _data = Directory.CreateTempSubdirectory("sightglass-spoken-").FullName;

        public WebApplication App { get; private set; } = null!;

        public HttpClient Client { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            string folder = Shelves.Folder("curlew");
            App = WebHost.Build(new(folder, 0) { Clock = new ManualClock(), DataFolder = _data, SharePort = 0, Tongues = [.. Tongue.All, Tongue.Marked], RuleFolders = [Path.Combine(folder, "..", "..", "rules", "us-cfr49")] }, new DiagnosticList())!;
            await App.StartAsync();
            Client = new(new HttpClientHandler { UseCookies = false, AllowAutoRedirect = false }) { BaseAddress = new(WebHost.Address(App)) };
            QuestionDesk questions = new(App.Services.GetRequiredService<DataDesk>().Folder, new ManualClock());
            Assert.Null(questions.Ask(Shelves.Curlew.Book, "007?", "", "", "008", new(2999, 1, 2)));
        }

        public async ValueTask DisposeAsync()
        {
            Client.Dispose();
            await App.DisposeAsync();
            Directory.Delete(_data, recursive: true);
        }
    }
}
