using System.Buffers;
using System.Collections.Immutable;
using System.Net.WebSockets;
using System.Text.Json;
using System.Threading.Channels;
using Microsoft.AspNetCore.Http;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Room.Trainee;

/// <summary>The line to one trainee's page: sends pieces that have changed, at most ten times a second, and takes what is asked for.</summary>
internal sealed class TraineeLine
{
    private const int LongestAsk = 4096;

    /// <summary>Between the beginnings of two messages, a little less than a beat of the room: what each beat brings is sent at once.</summary>
    private static readonly TimeSpan s_least = TimeSpan.FromMilliseconds(80);
    private static readonly JsonSerializerOptions s_json = new(JsonSerializerDefaults.Web) { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly WebSocket _socket;
    private readonly Seat _seat;
    private readonly TraineeDesk _desk;
    private readonly TraineeView _view;
    private readonly TimeProvider _clock;
    private readonly SentPieces _sent = new();
    private readonly Lock _deskGate = new();

    // One wish is enough: whoever wakes sends what is newest.
    private readonly Channel<bool> _wishes = Channel.CreateBounded<bool>(new BoundedChannelOptions(1) { FullMode = BoundedChannelFullMode.DropWrite });

    private TraineeLine(WebSocket socket, TrainingRoom room, Seat seat, TimeProvider clock)
    {
        (_socket, _seat, _clock) = (socket, seat, clock);
        _desk = new(room, seat);
        _view = new(room, seat, _desk);
    }

    /// <summary>Answers a page that wants a line.</summary>
    public static async Task Serve(HttpContext context, TrainingRoom room, TimeProvider clock)
    {
        if (room.Find(context.Request.Cookies[TraineePages.Cookie]) is not { } seat)
        {
            context.Response.StatusCode = StatusCodes.Status401Unauthorized;
            return;
        }

        if (!context.WebSockets.IsWebSocketRequest || !IsFromHere(context))
        {
            context.Response.StatusCode = StatusCodes.Status400BadRequest;
            return;
        }

        using WebSocket socket = await context.WebSockets.AcceptWebSocketAsync(new WebSocketAcceptContext { DangerousEnableCompression = true, KeepAliveInterval = TimeSpan.FromSeconds(5), KeepAliveTimeout = TimeSpan.FromSeconds(15) });
        TraineeLine line = new(socket, room, seat, clock);
        await line.Run(room, context.RequestAborted);
    }

    /// <summary>A page of another address cannot open a line with this browser's cookie.</summary>
    private static bool IsFromHere(HttpContext context) =>
        Uri.TryCreate(context.Request.Headers.Origin.ToString(), UriKind.Absolute, out Uri? origin) && origin.Authority == context.Request.Host.ToUriComponent();

    private async Task Run(TrainingRoom room, CancellationToken stop)
    {
        using CancellationTokenSource gone = CancellationTokenSource.CreateLinkedTokenSource(stop);
        _seat.Changed += Want;
        using IDisposable page = room.Open(_seat);
        try
        {
            Want();
            Task sending = SendAll(gone.Token), taking = Take(gone.Token);

            // Where one of them ends, for whatever reason, the line does: the page opens another and gets all anew.
            Task first = await Task.WhenAny(sending, taking);
            await gone.CancelAsync();
            await first;
            await Task.WhenAll(sending, taking);
        }
        catch (Exception e) when (e is WebSocketException or OperationCanceledException or ObjectDisposedException)
        {
            // The page is gone; the clock stands until it is back.
        }
        finally
        {
            _seat.Changed -= Want;
            await gone.CancelAsync();
        }
    }

    private void Want() => _wishes.Writer.TryWrite(true);

    private async Task SendAll(CancellationToken stop)
    {
        await foreach (bool wish in _wishes.Reader.ReadAllAsync(stop))
        {
            long began = _clock.GetTimestamp();
            byte[] changed = Changed();
            if (changed.Length == 0)
            {
                continue;
            }

            await _socket.SendAsync(changed, WebSocketMessageType.Text, true, stop);
            TimeSpan left = s_least - _clock.GetElapsedTime(began);
            if (left > TimeSpan.Zero)
            {
                await Task.Delay(left, _clock, stop);
            }
        }
    }

    /// <summary>What the page does not have yet, as it is sent; empty where it has all.</summary>
    private byte[] Changed()
    {
        ImmutableArray<Fragment> pieces;
        lock (_deskGate)
        {
            pieces = _view.Pieces();
        }

        List<object> changed = _sent.Changed(pieces);
        return changed.Count == 0 ? [] : JsonSerializer.SerializeToUtf8Bytes(changed, s_json);
    }

    private async Task Take(CancellationToken stop)
    {
        byte[] room = ArrayPool<byte>.Shared.Rent(LongestAsk);
        try
        {
            while (_socket.State == WebSocketState.Open)
            {
                int length = 0;
                ValueWebSocketReceiveResult got;
                do
                {
                    got = await _socket.ReceiveAsync(room.AsMemory(length, LongestAsk - length), stop);
                    length += got.Count;
                }
                while (!got.EndOfMessage && length < LongestAsk);
                if (got.MessageType == WebSocketMessageType.Close || !got.EndOfMessage)
                {
                    await _socket.CloseAsync(got.MessageType == WebSocketMessageType.Close ? WebSocketCloseStatus.NormalClosure : WebSocketCloseStatus.MessageTooBig, null, stop);
                    return;
                }

                Heard(room.AsSpan(0, length));
            }
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(room);
        }
    }

    private void Heard(ReadOnlySpan<byte> message)
    {
        try
        {
            if (JsonSerializer.Deserialize<TraineeAsk>(message, s_json) is { } ask)
            {
                lock (_deskGate)
                {
                    _desk.Take(ask);
                }
            }
        }
        catch (JsonException)
        {
            // Nothing that a page of ours sends.
        }

        Want();
    }
}
