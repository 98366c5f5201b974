using System.Collections.Immutable;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Live;
using Sightglass.Web.Parts;
using Sightglass.Web.Rules;

namespace Sightglass.Web.Host;

/// <summary>Serves the pages of a book on this computer, and to nobody else.</summary>
public static class WebHost
{
    /// <summary>The application, not started.</summary>
    /// <param name="bookFolder">The book's folder.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="recordFolder">Where sessions are recorded, or null to keep nothing.</param>
    /// <param name="found">Errors and warnings of the book.</param>
    /// <param name="clock">The clock on the wall; the system's where null.</param>
    /// <param name="ruleFolders">Sets of published rules that the book is held against.</param>
    /// <returns>Null where the book has errors.</returns>
    public static WebApplication? Build(string bookFolder, int port, string? recordFolder, DiagnosticList found, TimeProvider? clock = null, IReadOnlyList<string>? ruleFolders = null)
    {
        if (BookShelf.Open(bookFolder, found) is not { } shelf)
        {
            return null;
        }

        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ApplicationName = typeof(WebHost).Assembly.GetName().Name, EnvironmentName = "Production" });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(k => k.Listen(System.Net.IPAddress.Loopback, port));
        builder.Logging.ClearProviders().AddSimpleConsole(c => c.SingleLine = true).SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddSingleton(_ => new MachineRoom(shelf, recordFolder, clock ?? TimeProvider.System));
        builder.Services.AddSingleton(_ => RuleShelf.Open(ruleFolders ?? []));
        WebApplication app = builder.Build();
        SecurityHeaders.Use(app);
        app.UseAntiforgery();
        Files.Map(app, shelf);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
        return app;
    }

    /// <summary>Serves until asked to stop.</summary>
    /// <param name="bookFolder">The book's folder.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="recordFolder">Where sessions are recorded; the user's own data folder where null.</param>
    /// <param name="ruleFolders">Sets of published rules that the book is held against.</param>
    /// <param name="serving">Told the address once it answers.</param>
    /// <param name="cancel">Asks to stop.</param>
    /// <returns>What was found wrong with the book; empty when it was served.</returns>
    public static async Task<ImmutableArray<Diagnostic>> ServeAsync(
        string bookFolder, int port, string? recordFolder, IReadOnlyList<string> ruleFolders, Action<string> serving, CancellationToken cancel)
    {
        ArgumentNullException.ThrowIfNull(serving);
        DiagnosticList found = new();
        WebApplication? app = Build(bookFolder, port, recordFolder ?? UsualRecords(bookFolder), found, ruleFolders: ruleFolders);
        if (app is null)
        {
            return [.. found.Where(d => d.Severity == Severity.Error)];
        }

        await using (app)
        {
            _ = app.Services.GetRequiredService<MachineRoom>();
            await app.StartAsync(cancel);
            serving(Address(app));
            await app.WaitForShutdownAsync(cancel);
        }

        return [];
    }

    /// <summary>Where a started application answers.</summary>
    public static string Address(WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        return app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
    }

    private static string UsualRecords(string bookFolder)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        string root = home.Length > 0 ? home : Path.GetTempPath();
        return Path.Combine(root, "sightglass", "records", Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(bookFolder))));
    }
}
