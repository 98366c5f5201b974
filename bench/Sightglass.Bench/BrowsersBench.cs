using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Host;
using Sightglass.Web.Live;
using Sightglass.Web.Room;

namespace Sightglass.Bench;

/// <summary>
/// How many trainees' pages are served at once: each has a line of its own and a drill of its own in real time, and walks or puts a hand to something now and then. The pages are played by this program, so that both
/// ends share the machine's cores.
/// </summary>
internal static partial class BrowsersBench
{
    private const string Drill = "light the train";
    private const double Seconds = 20;
    private static readonly int[] s_counts = [10, 30, 100, 300];
    private const double Late = 0.05;
    private static readonly TimeSpan s_act = TimeSpan.FromSeconds(8);

    public static async Task RunAsync(Report report, int most)
    {
        report.Section("Trainees' pages, each with a drill of its own: the locomotive and three coaches");
        report.Line(FormattableString.Invariant($"Each page is sent what changes, at most ten times a second, for {Seconds} s, and its trainee does something every {s_act.TotalSeconds} s: walks on by one of the ways shown, or operates one of the things shown. In time: a new second of the drill is on its page within {Late * 1000:0} ms of the moment at which it is due, by the earliest second of the same drill; of beats: the room has it by then."));
        report.Line();
        report.Header("pages", "seconds in time", "beats in time", "middle, 99 of 100 and latest, ms", "processor, of one core, both ends", "bytes a second a page", "the same, as they are sent", "bytes of the first picture", "acts a page", "most of it");
        foreach (int count in s_counts.TakeWhile(c => c <= most))
        {
            report.Row([.. await Measure(count)]);
        }
    }

    private static async Task<string[]> Measure(int count)
    {
        await using WebApplication app = WebHost.Build(new(Path.Combine(Paths.Root, "books", "curlew"), 0), new DiagnosticList()) ?? throw new InvalidOperationException("the demo cannot be served");
        await app.StartAsync();
        TrainingRoom room = app.Services.GetRequiredService<TrainingRoom>();
        Uri address = new(WebHost.Address(app));
        Page[] pages = [.. Enumerable.Range(0, count).Select(i => new Page(room, address, i))];
        foreach (Page page in pages)
        {
            await page.Open();
        }

        foreach (Page page in pages)
        {
            page.Go();
        }

        // All begin at the same moment here, which no room does: until each has its first picture nothing is counted.
        await Task.Delay(TimeSpan.FromSeconds(4 + (count / 10)));
        TimeSpan busy = Process.GetCurrentProcess().TotalProcessorTime;
        Stopwatch wall = Stopwatch.StartNew();
        foreach (Page page in pages)
        {
            page.Count(wall);
        }

        while (wall.Elapsed.TotalSeconds < Seconds)
        {
            await Task.Delay(s_act / count);
            await pages[(int)(wall.Elapsed.TotalMilliseconds * count / s_act.TotalMilliseconds) % count].Act();
        }

        double used = (Process.GetCurrentProcess().TotalProcessorTime - busy).TotalSeconds / wall.Elapsed.TotalSeconds;
        double bytes = pages.Average(p => p.Bytes) / wall.Elapsed.TotalSeconds;
        double[] off = [.. pages.SelectMany(p => p.Off()).Order()];
        double[] beats = [.. pages.SelectMany(p => p.BeatsOff())];
        foreach (Page page in pages)
        {
            page.Dispose();
        }

        return [F(count, "0"), Share(off), Share(beats), off.Length == 0 ? "none" : $"{F(1000 * off[off.Length / 2], "0.0")}, {F(1000 * off[(int)(0.99 * (off.Length - 1))], "0.0")}, {F(1000 * off[^1], "0.0")}", F(used, "0.00"), F(bytes, "0"), F(pages.Average(p => p.OnTheWire) / wall.Elapsed.TotalSeconds, "0"), F(pages.Average(p => p.First), "0"), F(pages.Average(p => p.Acts), "0.0"), string.Join(", ", pages.SelectMany(p => p.Pieces).GroupBy(p => p.Key).Select(g => (g.Key, Sum: g.Sum(p => p.Value))).OrderByDescending(g => g.Sum).Take(6).Select(g => $"{g.Key} {F(100.0 * g.Sum / pages.Sum(p => p.Bytes), "0")} %"))];
    }

    private static string Share(double[] off) => $"{F(100.0 * off.Count(o => o <= Late) / Math.Max(1, off.Length), "0.0")} %";

    private static string F(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    /// <summary>A page that is played.</summary>
    private sealed partial class Page(TrainingRoom room, Uri address, int number) : IDisposable
    {
        private readonly ClientWebSocket _line = new();
        private readonly Lock _gate = new();
        private readonly Dictionary<int, double> _shown = [];
        private readonly Dictionary<int, double> _arrived = [];
        private Seat _seat = null!;
        private Stopwatch? _wall;
        private readonly Dictionary<string, string> _shows = [];
        private readonly string[] _kept = new string[64];
        private int _next;
        private int _acts;
        private int _second = -1;
        private CountedStream? _wire;
        private HttpMessageInvoker? _way;
        private long _before;

        public long Bytes { get; private set; }

        public long First { get; private set; }

        /// <summary>Buttons pressed.</summary>
        public int Acts { get; private set; }

        /// <summary>As they go over the line, compressed.</summary>
        public long OnTheWire => _wire!.Taken - _before;

        /// <summary>Bytes by piece of the page.</summary>
        public Dictionary<string, long> Pieces { get; } = [];

        public async Task Open()
        {
            room.Join(FormattableString.Invariant($"trainee {number}"), out Seat? seat, out string key);
            _seat = seat!;
            if (room.Begin(Drill, 1, (ulong)number, [_seat], alone: true) is { } why)
            {
                throw new InvalidOperationException(why);
            }

            _line.Options.SetRequestHeader("Cookie", "sightglass-seat=" + key);
            _line.Options.SetRequestHeader("Origin", address.GetLeftPart(UriPartial.Authority));
            _line.Options.DangerousDeflateOptions = new WebSocketDeflateOptions(); // as a browser asks for
            _way = new(new SocketsHttpHandler { ConnectCallback = Count }, disposeHandler: true);
            await _line.ConnectAsync(new UriBuilder(address) { Scheme = "ws", Path = "/drill/line" }.Uri, _way, CancellationToken.None);
            _ = Task.Run(Read);
        }

        private async ValueTask<Stream> Count(SocketsHttpConnectionContext to, CancellationToken stop)
        {
            Socket socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
            await socket.ConnectAsync(to.DnsEndPoint, stop);
            return _wire = new CountedStream(new NetworkStream(socket, ownsSocket: true));
        }

        public void Go()
        {
            _seat.Drill!.Session!.Wanted = Pace.Real;
            _seat.Drill.Session.Changed += Shown;
            _seat.Drill.Session.Release(HoldReason.Brief);
        }

        public void Count(Stopwatch wall)
        {
            lock (_gate)
            {
                (First, Bytes, _before, _wall) = (Bytes, 0, _wire!.Taken, wall);
            }
        }

        /// <summary>Presses one of the buttons shown: twice a way, then a thing within reach.</summary>
        public async Task Act()
        {
            string[] asks;
            lock (_gate)
            {
                bool walks = _acts++ % 3 != 2;
                asks =
                [
                    .. from shown in _shows
                       where shown.Key == "ways" == walks
                       from Match button in Pressed().Matches(shown.Value)
                       select $$"""{"do":"{{button.Groups[1].Value}}","what":{{Said(button.Groups[2])}},"to":{{Said(button.Groups[3])}},"sure":true}""",
                ];
            }

            if (asks.Length > 0)
            {
                Acts++;
                await _line.SendAsync(Encoding.UTF8.GetBytes(asks[((7 * number) + _acts) % asks.Length]), WebSocketMessageType.Text, true, CancellationToken.None);
            }
        }

        /// <summary>Of each second how late the page had it.</summary>
        public IEnumerable<double> Off()
        {
            lock (_gate)
            {
                double start = Start();
                return [.. _arrived.Where(a => _shown.ContainsKey(a.Key)).Select(a => a.Value - a.Key - start)];
            }
        }

        /// <summary>Of each second how late the beat that showed it came.</summary>
        public IEnumerable<double> BeatsOff()
        {
            lock (_gate)
            {
                double start = Start();
                return [.. _shown.Select(s => s.Value - s.Key - start)];
            }
        }

        /// <summary>When the drill's second 0 would have been due, by its earliest one.</summary>
        private double Start() => _shown.Count == 0 ? 0 : _shown.Min(s => s.Value - s.Key);

        public void Dispose()
        {
            _line.Dispose();
            _way?.Dispose();
        }

        private void Shown()
        {
            lock (_gate)
            {
                int second = (int)_seat.Drill!.Session!.Current.Now.Seconds;
                if (_wall is null || second == _second)
                {
                    return;
                }

                // The one that went on when counting began may have begun before.
                if (_second >= 0)
                {
                    _shown.TryAdd(second, _wall.Elapsed.TotalSeconds);
                }

                _second = second;
            }
        }

        private void Sort(ReadOnlySpan<byte> message)
        {
            JsonElement[] pieces = JsonSerializer.Deserialize<JsonElement[]>(message)!;
            for (int i = 0; i < pieces.Length; i += 2)
            {
                string id = pieces[i].GetString()!, html = Content(pieces[i + 1]);
                _shows[id] = html;
                if (_wall is null)
                {
                    continue;
                }

                if (id == "clock")
                {
                    _arrived.TryAdd(html.Split(' ')[0].Split(':').Aggregate(0, (sum, part) => (60 * sum) + int.Parse(part, CultureInfo.InvariantCulture)), _wall.Elapsed.TotalSeconds);
                }

                string name = id.Split('-')[0];
                Pieces[name] = Pieces.GetValueOrDefault(name) + Encoding.UTF8.GetByteCount(pieces[i + 1].GetRawText());
            }
        }

        /// <summary>As the page's script has it.</summary>
        private string Content(JsonElement piece)
        {
            if (piece.ValueKind == JsonValueKind.Number)
            {
                return _kept[piece.GetInt32()];
            }

            string html = piece.GetString()!;
            if (html.Length >= 400)
            {
                (_kept[_next], _next) = (html, (_next + 1) % _kept.Length);
            }

            return html;
        }

        private async Task Read()
        {
            byte[] room = new byte[1 << 20];
            try
            {
                while (_line.State == WebSocketState.Open)
                {
                    int length = 0;
                    ValueWebSocketReceiveResult got;
                    do
                    {
                        got = await _line.ReceiveAsync(room.AsMemory(length), CancellationToken.None);
                        length += got.Count;
                    }
                    while (!got.EndOfMessage);
                    lock (_gate)
                    {
                        Bytes += length;
                        Sort(room.AsSpan(0, length));
                    }
                }
            }
            catch (Exception e) when (e is WebSocketException or ObjectDisposedException or OperationCanceledException)
            {
                // Measured, and gone.
            }
        }

        private static string Said(Group attribute) => JsonSerializer.Serialize(WebUtility.HtmlDecode(attribute.Value));

        [GeneratedRegex("data-do=\"(walk|operate)\" data-what=\"([^\"]*)\"(?: data-to=\"([^\"]*)\")?")]
        private static partial Regex Pressed();
    }
}
