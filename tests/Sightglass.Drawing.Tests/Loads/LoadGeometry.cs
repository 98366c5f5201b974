using System.Collections.Immutable;
using Sightglass.Drawing.Loads;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Loads;

/// <summary>What holds of any plan of wheel loads.</summary>
internal static class LoadGeometry
{
    /// <summary>What wheels carry, t: right before left, axle by axle.</summary>
    public static LoadState Loads(LoadInput input, double[] tonnes) => LoadState.Unknown with
    {
        Real = input.Axles.SelectMany((a, i) => new[] { (new LoadWheel(a.Id, true), tonnes[2 * i]), (new LoadWheel(a.Id, false), tonnes[(2 * i) + 1]) }).ToImmutableDictionary(w => w.Item1, w => w.Item2 * 1000),
    };

    /// <summary>Every wheel where its axle is, bars in proportion, limits at their place, nothing over anything else, all on the sheet.</summary>
    public static void Check(LoadInput input, LoadState state, LoadOptions options)
    {
        LoadLayout layout = LoadLayout.Of(input, state, options);
        bool up = options.Upright;
        Assert.Equal(2 * input.Axles.Length, layout.Bars.Length);
        double Along(Bounds b) => up ? (b.Low + b.High) / 2 : (b.Left + b.Right) / 2;
        foreach (bool right in new[] { true, false })
        {
            LoadBar[] side = [.. layout.Bars.Where(b => b.Wheel.IsRight == right)];
            Assert.Equal(input.Axles.Select(a => a.Id), side.OrderBy(b => Along(b.Room)).Select(b => b.Wheel.Axle));
        }

        double perKilogram = layout.Bars.Where(b => b.Load > 1).Select(b => Length(b.Known!.Value) / b.Load).DefaultIfEmpty(0).Max();
        foreach (LoadBar bar in layout.Bars)
        {
            Assert.Equal(state.Real[bar.Wheel], bar.Load);
            Assert.Equal(bar.Load * perKilogram, Length(bar.Known!.Value), 1e-6);
            Assert.Equal(Along(bar.Room), Along(bar.Tread), 1e-6);
            Assert.True(bar.Room.DistanceTo(layout.Body) > 3 && Inside(bar.Room, layout.Sheet) && Inside(bar.Number, layout.Sheet), $"{bar}");
            Assert.True(bar.Number.DistanceTo(bar.Room) > 0, $"{bar}");
            if (bar.Limit is { } limit)
            {
                double most = input.Axles.First(a => a.Id == bar.Wheel.Axle).Most!.Value;
                double at = up ? Math.Abs(limit.FromX - Foot(bar.Room)) : Math.Abs(limit.FromY - Foot(bar.Room));
                Assert.Equal(most * perKilogram, at, 1e-6);
            }
        }

        for (int i = 0; i < layout.Bars.Length; i++)
        {
            for (int j = i + 1; j < layout.Bars.Length; j++)
            {
                (LoadBar a, LoadBar b) = (layout.Bars[i], layout.Bars[j]);
                Assert.True(a.Room.DistanceTo(b.Room) > 4 && a.Tread.DistanceTo(b.Tread) > 0 && a.Number.DistanceTo(b.Number) > 0 && a.Number.DistanceTo(b.Room) > 0, $"{a} {b}");
            }
        }

        double Length(Bounds b) => up ? b.Width : b.Height;
        double Foot(Bounds room) => up ? (room.Left > layout.Body.Right ? room.Left : room.Right) : room.High < layout.Body.Low ? room.High : room.Low;
    }

    private static bool Inside(Bounds a, Bounds b) => a.Left >= b.Left && a.Right <= b.Right && a.Low >= b.Low && a.High <= b.High;
}
