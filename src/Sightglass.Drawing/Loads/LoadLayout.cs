using System.Collections.Immutable;
using Sightglass.Basics.Quantities;
using Sightglass.Drawing.Shapes;
using Sightglass.Drawing.Text;

namespace Sightglass.Drawing.Loads;

/// <summary>A plan of wheel loads as data, pixels, y downwards.</summary>
public sealed class LoadLayout
{
    internal const double Type = 13;

    /// <summary>What a scale and the truth may differ by and still be said once, kg: nobody sees less in a bar.</summary>
    private const double Alike = 75;

    /// <summary>So far a bar grows beyond what a wheel may carry before it is drawn smaller.</summary>
    private const double Beyond = 1.35;

    private const double Gap = 7;
    private const double WriteInWidth = 46;

    private readonly LoadState _state;
    private readonly double _body;
    private readonly double _room;
    private readonly double _thick;
    private readonly double _full;

    private LoadLayout(LoadInput input, LoadState state, LoadOptions options)
    {
        (Input, _state, Options) = (input, state, options);
        double length = Math.Max(input.To - input.From, 1);
        double words = TextMeasure.Width(Text(88_800), TextFace.Sans600, Type) + 8;
        bool upright = options.Upright;
        _body = upright ? 54 : 46;
        _room = upright ? (options.Width / 2) - _body - Gap - words : 92;
        // Room to write by hand.
        double row = options.WriteIn ? 2 * Type : Type;
        double edge = upright ? 34 : 58;
        double scale = upright ? 21 : (options.Width - (2 * edge)) / length;
        _thick = Math.Min(upright ? 17 : 30, NearestAxles(input) * scale * 0.6);
        double half = _body + Gap + _room + (upright ? words : row + 10);
        Map = new(upright, input.From, edge, scale, half);
        double along = (length * scale) + (2 * edge);
        Sheet = upright ? new(0, 0, options.Width, along) : new(0, 0, options.Width, 2 * half);
        _full = Math.Max(Beyond * input.Axles.Select(a => a.Most ?? 0).DefaultIfEmpty(0).Max(), 1.02 * Loads().DefaultIfEmpty(1).Max());
        Body = upright ? new(half - _body, edge, half + _body, along - edge) : new(edge, half - _body, options.Width - edge, half + _body);
        Bars = [.. input.Axles.SelectMany(a => new[] { Bar(a, true), Bar(a, false) })];
    }

    public LoadInput Input { get; }

    public LoadOptions Options { get; }

    public Bounds Sheet { get; }

    /// <summary>The vehicle from above.</summary>
    public Bounds Body { get; }

    /// <summary>From the head of the train, right before left.</summary>
    public ImmutableArray<LoadBar> Bars { get; }

    internal LoadMap Map { get; }

    /// <summary>Lays loads out for drawing.</summary>
    public static LoadLayout Of(LoadInput input, LoadState state, LoadOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(state);
        return new(input, state, options ?? new());
    }

    /// <summary>Where something of the vehicle is: metres across it as they are, the body being drawn as wide as it suits.</summary>
    internal (double X, double Y) PointOf(LoadPoint point) => Map.Point(point.X, Across(point.Y));

    /// <summary>A load as it is said.</summary>
    internal string Text(double kilograms) => QuantityFormat.Text(kilograms, Input.Unit, Input.Unit.Factor / (Input.Unit.Symbol == "t" ? 10 : 1));

    private static double NearestAxles(LoadInput input) => input.Axles.Zip(input.Axles.Skip(1), (a, b) => b.X - a.X).Append(2).Min();

    private double Across(double metres) => Math.Clamp(metres / Math.Max(Input.HalfWidth, 0.1), -1, 1) * _body * 0.86;

    private IEnumerable<double> Loads() => Input.Axles.SelectMany(a => new[] { new LoadWheel(a.Id, true), new LoadWheel(a.Id, false) }).SelectMany(w => new[] { _state.Known(w), _state.Read.TryGetValue(w, out double read) ? read : null }).OfType<double>();

    private LoadBar Bar(LoadAxle axle, bool right)
    {
        LoadWheel wheel = new(axle.Id, right);
        double side = right != Input.IsTurned ? 1 : -1;
        double foot = _body + Gap;
        double Reach(double load) => side * (foot + (_room * Math.Clamp(load / _full, 0, 1)));
        double? read = _state.Read.TryGetValue(wheel, out double shown) ? shown : null;
        double? known = _state.Known(wheel);
        double? drawn = read ?? known;
        bool parts = read is { } r && known is { } k && Math.Abs(r - k) > Alike;
        (double, double, double, double)? limit = null;
        if (axle.Most is { } most)
        {
            Bounds line = Map.Box(axle.X, _thick + 10, Reach(most), Reach(most));
            limit = (line.Left, line.Low, line.Right, line.High);
        }

        string text = drawn is { } said ? Text(said) : "";
        double width = drawn is null && Options.WriteIn ? WriteInWidth : TextMeasure.Width(text, TextFace.Sans600, Type);
        // Beyond all bars, where no line crosses it.
        (double x, double y) = Map.Point(axle.X, side * (foot + _room + (Options.Upright ? 5 + (width / 2) : Options.WriteIn ? 1.5 * Type : Type)));
        return new(
            wheel, Map.Box(axle.X, 0.92 * Map.Scale, side * (Across(0.75) - 3), side * (Across(0.75) + 3)), Map.Box(axle.X, _thick, side * foot, Reach(_full)),
            drawn is { } load ? Map.Box(axle.X, _thick, side * foot, Reach(load)) : null, read is not null, drawn ?? 0,
            parts ? Map.Point(axle.X, Reach(known!.Value)) : null, limit, axle.Most is { } may && drawn is { } bears ? bears - may : 0,
            new(x - (width / 2), y - (Type / 2), x + (width / 2), y + (Type / 2)), text);
    }
}
