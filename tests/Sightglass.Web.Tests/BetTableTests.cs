using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Storage;
using Sightglass.Training.Bets;
using Sightglass.Web.Bets;
using Sightglass.Web.Host;
using Sightglass.Web.Live;

namespace Sightglass.Web.Tests;

public sealed class BetTableTests(BetTableTests.Room room) : IClassFixture<BetTableTests.Room>, IAsyncLifetime
{
    private static readonly Bet s_bet = Shelves.Curlew.Book.Bets["twenty seconds later"];
    private static readonly Guid s_phone = Guid.Parse("018f0000-0000-7000-8000-000000000001");

    private BetTable Table => room.App.Services.GetRequiredService<BetTable>();

    public async ValueTask InitializeAsync() => await Table.Lay(room.App.Services.GetRequiredService<MachineRoom>().Shelf.Book.Bets[s_bet.Name]);

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    /// <summary>Hands and phones count together, a phone once; what comes true is told to no phone before it has; the round is kept without names.</summary>
    [Fact]
    public async Task Round_FromTheQuestionToTheEnd()
    {
        Table.Raise(0, 1);
        Table.Raise(0, 1);
        Table.Raise(0, -1);
        Table.Raise(1, -1);
        Assert.True(await Say(0));
        Assert.True(await Say(1));
        Assert.Equal([1, 1], Table.Counts);
        JsonElement asking = await Now();
        Assert.Equal("asking", asking.GetProperty("phase").GetString());
        Assert.Equal(1, asking.GetProperty("mine").GetInt32());
        Assert.Equal(JsonValueKind.Null, asking.GetProperty("cameTrue").ValueKind);

        Table.Run();
        Assert.Equal(BetPhase.Running, Table.Phase);
        Assert.False(await Say(0));
        Table.Show(5);
        Assert.Equal((5, BetPhase.Running), (Table.Frame, Table.Phase));
        Assert.Equal(JsonValueKind.Null, (await Now()).GetProperty("cameTrue").ValueKind);
        Table.Show(int.MaxValue);
        Assert.Equal(BetPhase.Told, Table.Phase);
        Assert.Equal(Table.Film!.Result.CameTrue, (await Now()).GetProperty("cameTrue").GetInt32());
        Table.Show(3);
        Table.Show(int.MaxValue);

        using RecordsContext records = room.App.Services.GetRequiredService<DataDesk>().Records();
        BetRound kept = records.BetRounds.OrderBy(r => r.At).ThenBy(r => r.Id).Last();
        Assert.Equal((s_bet.Name, "1,1", Table.Film.Result.CameTrue), (kept.Bet, kept.Counts, kept.CameTrue));
    }

    [Fact]
    public async Task Run_WithTheClock_ComesToTheEnd()
    {
        TaskCompletionSource told = new(TaskCreationOptions.RunContinuationsAsynchronously);
        Table.Changed += () => { if (Table.Phase == BetPhase.Told) { told.TrySetResult(); } };
        Table.Run();
        room.Clock.Pass(31);
        await told.Task.WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
        Assert.Equal(Table.Film!.Frames.Length - 1, Table.Frame);
    }

    [Theory]
    [InlineData("{\"phone\":\"018f0000-0000-7000-8000-000000000001\",\"bet\":\"twenty seconds later\",\"answer\":0", HttpStatusCode.BadRequest)]
    [InlineData("[]", HttpStatusCode.BadRequest)]
    [InlineData("{\"phone\":\"me\",\"bet\":\"twenty seconds later\",\"answer\":0}", HttpStatusCode.BadRequest)]
    [InlineData("null", HttpStatusCode.BadRequest)]
    [InlineData("{\"phone\":\"018f0000-0000-7000-8000-000000000001\",\"bet\":\"another\",\"answer\":0}", HttpStatusCode.OK)]
    [InlineData("{\"phone\":\"018f0000-0000-7000-8000-000000000001\",\"bet\":\"twenty seconds later\",\"answer\":-1}", HttpStatusCode.OK)]
    [InlineData("{\"phone\":\"018f0000-0000-7000-8000-000000000001\",\"bet\":\"twenty seconds later\",\"answer\":99}", HttpStatusCode.OK)]
    public async Task Say_WhatIsNoAnswer_CountsForNothing(string body, HttpStatusCode status)
    {
        HttpResponseMessage reply = await room.Client.PostAsync(new Uri("/answer/say", UriKind.Relative), new StringContent(body, Encoding.UTF8, "application/json"));
        Assert.Equal(status, reply.StatusCode);
        Assert.Equal([0, 0], Table.Counts);
    }

    [Fact]
    public async Task Say_FromAFormOfAnotherPage_IsRefused()
    {
        HttpResponseMessage reply = await room.Client.PostAsync(new Uri("/answer/say", UriKind.Relative), new StringContent("{}", Encoding.UTF8, "text/plain"));
        Assert.Equal(HttpStatusCode.BadRequest, reply.StatusCode);
    }

    private async Task<bool> Say(int answer)
    {
        HttpResponseMessage reply = await room.Client.PostAsync(new Uri("/answer/say", UriKind.Relative), new StringContent(JsonSerializer.Serialize(new { phone = s_phone, bet = s_bet.Name, answer }), Encoding.UTF8, "application/json"));
        return (await reply.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("counts").GetBoolean();
    }

    private Task<JsonElement> Now() => room.Client.GetFromJsonAsync<JsonElement>(new Uri($"/answer/now?phone={s_phone}", UriKind.Relative));

    public sealed class Room : IAsyncLifetime
    {
        internal ManualClock Clock { get; } = new();

        public WebApplication App { get; private set; } = null!;

        public HttpClient Client { get; private set; } = null!;

        public async ValueTask InitializeAsync()
        {
            App = WebHost.Build(new(Shelves.Folder("curlew"), 0) { Clock = Clock }, new DiagnosticList())!;
            await App.StartAsync();
            Client = new() { BaseAddress = new(WebHost.Address(App)) };
        }

        public async ValueTask DisposeAsync()
        {
            Client.Dispose();
            await App.DisposeAsync();
        }
    }
}
