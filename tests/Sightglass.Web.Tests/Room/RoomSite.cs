using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Host;
using Sightglass.Web.Room;

namespace Sightglass.Web.Tests.Room;

/// <summary>The pages of the demo book, with the room open to the network.</summary>
public sealed class RoomSite : IAsyncLifetime
{
    public WebApplication App { get; private set; } = null!;

    public RoomDoor Door => App.Services.GetRequiredService<RoomKey>().Door!;

    /// <summary>The room's port, as another computer reaches it.</summary>
    public Uri Room => new($"http://127.0.0.1:{new Uri(Door.Told.Addresses[0]).Port}/");

    public async ValueTask InitializeAsync()
    {
        App = WebHost.Build(new(Shelves.Folder("curlew"), 0) { RoomPort = 0 }, new DiagnosticList())!;
        await App.StartAsync();
    }

    public async ValueTask DisposeAsync() => await App.DisposeAsync();
}
