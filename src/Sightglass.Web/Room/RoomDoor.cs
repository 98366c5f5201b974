using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Sightglass.Basics.Language;
using Sightglass.Web.Room.Trainee;
using Sightglass.Web.Share;

namespace Sightglass.Web.Room;

/// <summary>
/// What comes in over the room's network: the trainees' pages and nothing else, after a code that the instructor says aloud. Too many wrong tries, and nobody is heard for a minute.
/// </summary>
/// <param name="clock">The clock on the wall.</param>
public sealed class RoomDoor(TimeProvider clock)
{
    private const int Tries = 10;
    private static readonly TimeSpan s_window = TimeSpan.FromMinutes(1);

    private readonly Lock _gate = new();
    private readonly Queue<DateTimeOffset> _wrong = new();

    /// <summary>Six digits, for as long as the program runs.</summary>
    public string Code { get; } = RandomNumberGenerator.GetInt32(1_000_000).ToString("D6", CultureInfo.InvariantCulture);

    /// <summary>How trainees come in; known once it listens.</summary>
    public RoomTold Told { get; private set; } = new([], "", false);

    /// <summary>Tries a code.</summary>
    /// <returns>Null where it is the one; else what to tell.</returns>
    public string? Try(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        lock (_gate)
        {
            DateTimeOffset now = clock.GetUtcNow();
            while (_wrong.TryPeek(out DateTimeOffset first) && now - first >= s_window)
            {
                _wrong.Dequeue();
            }

            if (_wrong.Count >= Tries)
            {
                return Say.It("Too many tries. Wait a minute, then write the code that the instructor says.");
            }

            if (CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(Code), Encoding.UTF8.GetBytes(new string([.. code.Where(char.IsAsciiDigit)]))))
            {
                return null;
            }

            _wrong.Enqueue(now);
            return Say.It("This is not the code of the room.");
        }
    }

    internal void Opens(int port, bool secured)
    {
        Told = new([.. HostAddresses.Reached().Where(a => a.AddressFamily == AddressFamily.InterNetwork).DefaultIfEmpty(IPAddress.Loopback).Select(a => new UriBuilder(secured ? "https" : "http", a.ToString(), port).Uri.AbsoluteUri)], Code, secured);
    }

    /// <summary>Whether a request came in over the room's network.</summary>
    internal static bool IsRoom(HttpContext context) => context.Features.Get<RoomLine>() is not null;

    /// <summary>Listens on the network.</summary>
    /// <param name="kestrel">The server.</param>
    /// <param name="port">0 for any that is free.</param>
    /// <param name="certificate">What the line is secured with; null: it is not.</param>
    internal static void Listen(KestrelServerOptions kestrel, int port, X509Certificate2? certificate) => kestrel.Listen(IPAddress.Any, port, options =>
    {
        options.Use(next => connection =>
        {
            connection.Features.Set(new RoomLine());
            return next(connection);
        });
        if (certificate is not null)
        {
            options.UseHttps(certificate);
        }
    });

    internal static void Use(WebApplication app) => app.Use((context, next) =>
    {
        if (!IsRoom(context) || context.Request.Path.StartsWithSegments(TraineePages.Root))
        {
            return next();
        }

        if (HttpMethods.IsGet(context.Request.Method) && context.Request.Path.Value is "" or "/")
        {
            context.Response.Redirect(TraineePages.Root);
            return Task.CompletedTask;
        }

        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return Task.CompletedTask;
    });

    /// <summary>Marks a connection that came in over the room's network.</summary>
    private sealed class RoomLine;
}
