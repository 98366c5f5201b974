using System.Net;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Basics.Time;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Trainee;
using Sightglass.World;

namespace Sightglass.Web.Tests.Room;

/// <summary>What comes in over the room's network, by its own port, as another computer would.</summary>
public sealed class RoomDoorTests(RoomSite site) : IClassFixture<RoomSite>
{
    private RoomDoor Door => site.Door;

    [Fact]
    public async Task Network_ReachesTheTraineesPagesAndNothingElse()
    {
        using HttpClient there = Browser();
        foreach (string path in new[] { "/walk", "/machine", "/room", "/proposals", "/assets/pages.js", "/_blazor/negotiate", "/_framework/blazor.web.js", "/photo/x.jpg", "/papers/card.pdf", "/walkdown", "/answer", "/drills", "/drill/../machine", "/drill/look/../../machine", "/not-here", "/drill/no-such" })
        {
            HttpResponseMessage answer = await there.GetAsync(new Uri(path, UriKind.Relative));
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
            Assert.DoesNotContain("blazor", await answer.Content.ReadAsStringAsync(), StringComparison.OrdinalIgnoreCase);
        }

        foreach (string path in new[] { "/drill", "/drill/drill.js", "/drill/drill.css", "/drill/paper.css", "/drill/mark.svg", "/drill/look/tokens.css" })
        {
            Assert.Equal(HttpStatusCode.OK, (await there.GetAsync(new Uri(path, UriKind.Relative))).StatusCode);
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await there.GetAsync(new Uri("/drill/line", UriKind.Relative))).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await there.GetAsync(new Uri("/", UriKind.Relative))).StatusCode);
        Assert.Contains("could read along", await there.GetStringAsync(new Uri("/drill", UriKind.Relative)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task ComeIn_WithoutTheCode_NobodyIsSeated()
    {
        using HttpClient there = Browser();
        int before = site.App.Services.GetRequiredService<TrainingRoom>().Seats.Length;
        HttpResponseMessage answer = await ComeIn(there, "A. Alder", "12");
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Contains("not the code", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Equal(before, site.App.Services.GetRequiredService<TrainingRoom>().Seats.Length);
    }

    [Fact]
    public void Try_WrongTooOften_NobodyIsHeardForAMinute()
    {
        RoomDoor door = new(TimeProvider.System);
        Assert.All(Enumerable.Range(0, 10), _ => Assert.Contains("not the code", door.Try("1"), StringComparison.Ordinal));
        Assert.Contains("Too many tries", door.Try(door.Code), StringComparison.Ordinal); // right, and too late
        Assert.Null(new RoomDoor(TimeProvider.System) is { } other ? other.Try($" {other.Code[..3]}-{other.Code[3..]} ") : "");
    }

    [Fact]
    public async Task Line_WithASeat_SendsItsPieces()
    {
        using HttpClient there = Browser();
        HttpResponseMessage answer = await ComeIn(there, "A. Alder", Door.Code[..3] + " " + Door.Code[3..]);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        string cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        string pair = cookie.Split(';')[0];

        using ClientWebSocket line = new();
        line.Options.SetRequestHeader("Cookie", pair);
        line.Options.SetRequestHeader("Origin", site.Room.GetLeftPart(UriPartial.Authority));
        await line.ConnectAsync(new UriBuilder(site.Room) { Scheme = "ws", Path = "/drill/line" }.Uri, TestContext.Current.CancellationToken);
        Assert.Contains("A. Alder", string.Concat(await Receive(line)), StringComparison.Ordinal);
        await line.SendAsync(Encoding.UTF8.GetBytes("""{"do":"practise","what":"a headlight is dark"}"""), WebSocketMessageType.Text, true, TestContext.Current.CancellationToken);
        Assert.Contains("You are", string.Concat(await Receive(line)), StringComparison.Ordinal);
        await line.SendAsync(Encoding.UTF8.GetBytes("no json at all"), WebSocketMessageType.Text, true, TestContext.Current.CancellationToken);
        await line.SendAsync(Encoding.UTF8.GetBytes("""{"do":"go"}"""), WebSocketMessageType.Text, true, TestContext.Current.CancellationToken);
        Assert.Contains("Within reach", string.Concat(await Receive(line)), StringComparison.Ordinal);
    }

    /// <summary>Another address's page cannot open a line with this browser's cookie, nor can a stranger.</summary>
    /// <summary>A picture of the book goes to who stands where it is seen, and to nobody else.</summary>
    [Fact]
    public async Task Photo_OnlyWhereItIsSeen_IsSent()
    {
        const string panel = "fuel panel, right";
        Uri photo = new($"/drill/photo?at={Uri.EscapeDataString(panel)}&number=0", UriKind.Relative);
        using HttpClient there = Browser();
        Assert.Equal(HttpStatusCode.NotFound, (await there.GetAsync(photo)).StatusCode);
        HttpResponseMessage answer = await ComeIn(there, "B. Birch", Door.Code);
        string pair = answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        there.DefaultRequestHeaders.Add("Cookie", pair);
        TrainingRoom room = site.App.Services.GetRequiredService<TrainingRoom>();
        Seat seat = room.Find(pair.Split('=')[1])!;
        using IDisposable page = room.Open(seat);
        Assert.Null(room.Begin("a leak in the yard", 1, 3, [seat]));
        DrillSession session = seat.Drill!.Session!;
        session.Release(HoldReason.Brief);
        foreach ((string place, HttpStatusCode says) in new[] { ("fuel panel, left", HttpStatusCode.NotFound), (panel, HttpStatusCode.OK) })
        {
            if (session.Current.Sights[seat.Person].Place != place)
            {
                Assert.Null(session.Act(new WorldAction.Walk(seat.Person, place)));
                Assert.True(session.Forward(SimTime.FromSeconds(900), w => w.PlaceOf(w.People[seat.Person]) == place));
            }

            HttpResponseMessage sent = await there.GetAsync(photo);
            Assert.Equal(says, sent.StatusCode);
            Assert.Equal(says == HttpStatusCode.OK, sent.Content.Headers.ContentType?.MediaType == "image/svg+xml");
            string pieces = string.Concat(new TraineeView(room, seat, new(room, seat)).Pieces().Select(p => p.Html));
            Assert.Equal(says == HttpStatusCode.OK, pieces.Contains("/drill/photo?at=fuel%20panel%2C%20right&amp;number=0", StringComparison.Ordinal));
        }

        Assert.Equal(HttpStatusCode.NotFound, (await there.GetAsync(new Uri(photo.OriginalString.Replace("number=0", "number=7", StringComparison.Ordinal), UriKind.Relative))).StatusCode);
        room.End(seat.Drill!);
    }

    [Fact]
    public async Task Line_FromElsewhere_IsRefused()
    {
        using HttpClient there = Browser();
        string pair = (await ComeIn(there, "B. Birch", Door.Code)).Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        foreach ((string cookie, string origin) in new[] { (pair, "http://elsewhere.example"), ("sightglass-seat=00", site.Room.GetLeftPart(UriPartial.Authority)), (pair, "") })
        {
            using ClientWebSocket line = new();
            line.Options.SetRequestHeader("Cookie", cookie);
            if (origin.Length > 0)
            {
                line.Options.SetRequestHeader("Origin", origin);
            }

            await Assert.ThrowsAsync<WebSocketException>(() => line.ConnectAsync(new UriBuilder(site.Room) { Scheme = "ws", Path = "/drill/line" }.Uri, TestContext.Current.CancellationToken));
        }
    }

    private static async Task<string[]> Receive(ClientWebSocket line)
    {
        byte[] room = new byte[400_000];
        int length = 0;
        ValueWebSocketReceiveResult got;
        do
        {
            got = await line.ReceiveAsync(room.AsMemory(length), TestContext.Current.CancellationToken);
            length += got.Count;
        }
        while (!got.EndOfMessage);
        return JsonSerializer.Deserialize<string[]>(room.AsSpan(0, length))!;
    }

    private static async Task<HttpResponseMessage> ComeIn(HttpClient there, string name, string code)
    {
        using FormUrlEncodedContent form = new([KeyValuePair.Create("name", name), KeyValuePair.Create("code", code)]);
        return await there.PostAsync(new Uri("/drill", UriKind.Relative), form);
    }

    private HttpClient Browser() => new(new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = site.Room };
}
