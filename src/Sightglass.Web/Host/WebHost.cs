using System.Collections.Immutable;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Sightglass.Basics.Diagnostics;
using Sightglass.Storage;
using Sightglass.Storage.Proposals;
using Sightglass.Storage.WalkDowns;
using Sightglass.Web.Bets;
using Sightglass.Web.Debrief;
using Sightglass.Web.Failures;
using Sightglass.Web.Hauls;
using Sightglass.Web.Lesson;
using Sightglass.Web.Live;
using Sightglass.Web.Papers;
using Sightglass.Web.Parts;
using Sightglass.Web.Proposals;
using Sightglass.Web.Recordings;
using Sightglass.Web.Room;
using Sightglass.Web.Room.Trainee;
using Sightglass.Web.Rules;
using Sightglass.Web.Searches;
using Sightglass.Web.Share;
using Sightglass.Web.Trains;
using Sightglass.Web.Trials;
using Sightglass.Web.WalkDown;

namespace Sightglass.Web.Host;

/// <summary>Serves the pages of a book on this computer, and to nobody else.</summary>
public static class WebHost
{
    /// <summary>The application, not started.</summary>
    /// <param name="request">What is served.</param>
    /// <param name="found">Errors and warnings of the book.</param>
    /// <returns>Null where the book has errors.</returns>
    /// <exception cref="DataFolderException">The data folder cannot be opened.</exception>
    public static WebApplication? Build(ServeRequest request, DiagnosticList found)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (BookShelf.Open(request.BookFolder, found) is not { } shelf)
        {
            return null;
        }

        DataFolder? data = request.DataFolder is { } named ? DataFolder.Open(named) : null;
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ApplicationName = typeof(WebHost).Assembly.GetName().Name, EnvironmentName = "Production" });
        Sharing? sharing = request.SharePort is null ? null : Sharing.Open(data is null ? null : Path.Combine(data.Path, "share"), request.Clock);
        RoomDoor? door = request.RoomPort is null ? null : new(request.Clock);
        builder.WebHost.UseKestrelCore().ConfigureKestrel(k =>
        {
            k.Listen(System.Net.IPAddress.Loopback, request.Port);
            if (sharing is not null)
            {
                ShareGate.Listen(k, request.SharePort!.Value, sharing);
            }

            if (door is not null)
            {
                RoomDoor.Listen(k, request.RoomPort!.Value, request.RoomCertificate);
            }
        });
        builder.Logging.ClearProviders().AddSimpleConsole(c => c.SingleLine = true).SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddResponseCompression(); // not over HTTPS: what is secret there would stand beside what a caller writes
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        TonguesOffered tongues = new(shelf, request.Tongues, request.Language);
        builder.Services.AddSingleton(tongues);
        builder.Services.AddScoped<PageTongue>().AddScoped<CircuitHandler, SpeakingCircuit>();
        builder.Services.AddSingleton(request.Clock);
        builder.Services.AddSingleton(_ => new DataDesk(data));
        builder.Services.AddSingleton(_ => new MachineRoom(shelf, request.RecordFolder, request.Clock));
        builder.Services.AddSingleton(_ => new TrainingRoom(shelf, request.RecordFolder is { } kept ? Path.Combine(kept, "room") : null, request.Clock));
        builder.Services.AddSingleton<DebriefDesk>();
        builder.Services.AddSingleton(_ => new ShelfWatch(shelf, request.Clock));
        builder.Services.AddSingleton(s => new BetTable(shelf, s.GetRequiredService<DataDesk>(), request.Clock));
        builder.Services.AddSingleton(s => new PaperDesk(shelf, s.GetRequiredService<DataDesk>(), request.Clock));
        builder.Services.AddSingleton(_ => new SearchDesk(shelf)).AddSingleton(_ => new FailureDesk(shelf)).AddSingleton(_ => new HaulDesk(shelf)).AddSingleton(_ => new TrainDesk(shelf)).AddSingleton(_ => new TrialDesk(shelf)).AddSingleton(_ => new RecordingDesk(shelf));
        builder.Services.AddSingleton(_ => new ShareDesk(sharing));
        builder.Services.AddSingleton(_ => new RoomKey(door));
        builder.Services.AddSingleton(_ => RuleShelf.Open(request.RuleFolders));
        builder.Services.AddSingleton(s => new ProposalDesk(s.GetRequiredService<DataDesk>().Folder, shelf.Folder, request.Clock));
        builder.Services.AddSingleton(s => new WalkDownDesk(s.GetRequiredService<DataDesk>().Folder, s.GetRequiredService<ProposalDesk>(), request.Clock));
        WebApplication app = builder.Build();
        _ = app.Services.GetRequiredService<DataDesk>();
        app.UseResponseCompression();
        SecurityHeaders.Use(app);
        TongueHost.Use(app, tongues);
        if (sharing is not null)
        {
            ShareGate.Use(app, sharing);
            PairPage.Map(app, sharing, tongues);
            app.Lifetime.ApplicationStarted.Register(() => sharing.Listens(new Uri(Addresses(app).ElementAt(1)).Port));
        }

        if (door is not null)
        {
            RoomDoor.Use(app);
            app.Lifetime.ApplicationStarted.Register(() => door.Opens(new Uri(Addresses(app).Last()).Port, request.RoomCertificate is not null));
        }

        WrongAddress.Use(app);
        app.UseWebSockets();
        app.UseAntiforgery();
        Files.Map(app, shelf);
        AnswerPage.Map(app, tongues);
        WalkDownFiles.Map(app, shelf, tongues);
        ProposalFiles.Map(app);
        CardFiles.Map(app);
        SheetFiles.Map(app);
        LessonFiles.Map(app);
        TrainFiles.Map(app);
        TrialFiles.Map(app);
        DebriefFiles.Map(app);
        PhonePapers.Map(app);
        TraineePages.Map(app, shelf, tongues, door);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }

    /// <summary>Serves until asked to stop.</summary>
    /// <param name="request">What is served; its records and data are in the user's own data folder where it names none.</param>
    /// <param name="serving">Told the address once it answers.</param>
    /// <param name="cancel">Asks to stop.</param>
    /// <returns>What was found wrong with the book; empty when it was served.</returns>
    /// <exception cref="DataFolderException">The data folder cannot be opened.</exception>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<ImmutableArray<Diagnostic>> ServeAsync(ServeRequest request, Action<string> serving, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(serving);
        DiagnosticList found = new();
        ServeRequest whole = request with { RecordFolder = request.RecordFolder ?? UsualRecords(request.BookFolder), DataFolder = request.DataFolder ?? DataFolder.Usual(request.BookFolder) };
        WebApplication? app = Build(whole, found);
        if (app is null)
        {
            return [.. found.Where(d => d.Severity == Severity.Error)];
        }

        await using (app)
        {
            MachineRoom room = app.Services.GetRequiredService<MachineRoom>();
            _ = app.Services.GetRequiredService<ShelfWatch>();
            await app.StartAsync(cancel);
            request.Unsaid?.Invoke(room.Shelf.Now.Unsaid);
            serving(Address(app));
            if (app.Services.GetRequiredService<ShareDesk>().Sharing is { } sharing)
            {
                request.Shared?.Invoke(sharing);
                sharing.Pairing.Changed += () => request.Shared?.Invoke(sharing);
            }

            if (app.Services.GetRequiredService<RoomKey>().Door is { } door)
            {
                request.RoomOpened?.Invoke(door.Told);
            }

            await app.WaitForShutdownAsync(cancel);
        }

        return [];
    }

    /// <summary>Where a started application answers.</summary>
    public static string Address(WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        return Addresses(app).First(a => new Uri(a).IsLoopback);
    }

    /// <summary>In the order in which they were asked for: this computer alone, phones, the room.</summary>
    private static ICollection<string> Addresses(WebApplication app) => app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses;

    private static string UsualRecords(string bookFolder)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        string root = home.Length > 0 ? home : Path.GetTempPath();
        return Path.Combine(root, "sightglass", "records", Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(bookFolder))));
    }
}
