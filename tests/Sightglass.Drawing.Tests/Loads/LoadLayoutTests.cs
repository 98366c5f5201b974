using System.Collections.Immutable;
using CsCheck;
using Sightglass.Drawing.Loads;
using Sightglass.Drawing.Shapes;

namespace Sightglass.Drawing.Tests.Loads;

/// <summary>Geometry of a plan of wheel loads: every wheel where its axle is, bars in proportion, nothing over anything else.</summary>
public sealed class LoadLayoutTests
{
    private static readonly LoadOptions[] s_options = [new(), LoadOptions.Narrow];

    [Fact]
    public void Input_Demo_HasItsAxlesSpringsAndWhatLiesOnIt()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        Assert.Equal(["first axle", "second axle", "third axle", "fourth axle"], input.Axles.Select(a => a.Id));
        Assert.All(input.Axles, a => Assert.Equal((16_500.0, 1000.0), (a.Most!.Value, a.Difference!.Value)));
        Assert.Equal(12, input.Springs.Length);
        Assert.Equal(6, input.Masses.Length);
        Assert.False(LoadInput.Has(DemoBooks.Smallest, null));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Bars_Demo_AreInOrderInProportionAndApart(int how)
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = Loads(input, [14, 15, 12, 17, 9, 20, 15.5, 15]);
        Check(input, state, s_options[how]);
        LoadLayout layout = LoadLayout.Of(input, state, s_options[how]);
        Assert.Equal(2, layout.Bars.Count(b => b.Over > 0)); // 17 t and 20 t of 16.5 t
        Assert.All(layout.Bars, b => Assert.NotNull(b.Limit));
    }

    /// <summary>Any loads, two to eight axles anywhere at least a wheel apart.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Bars_AnyMachine_AreInOrderInProportionAndApart(int how) =>
        Gen.Select(Gen.Double[1.6, 4].Array[2, 8], Gen.Double[0, 30].Array[16], Gen.Bool).Sample((gaps, loads, turned) =>
        {
            double x = 1;
            ImmutableArray<LoadAxle> axles = [.. gaps.Select((g, i) => new LoadAxle($"axle {i}", $"Axle {i}", x += g, i % 2 == 0 ? 16_500 : null, 1000))];
            LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks") with { Axles = axles, Springs = [], Masses = [], From = 0, To = x + 2, IsTurned = turned };
            Check(input, Loads(input, loads), s_options[how]);
        });

    [Fact]
    public void Bars_Turned_HaveTheirRightOnTheOtherSide()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = Loads(input, [14, 15, 14, 15, 14, 15, 14, 15]);
        double Right(LoadInput of) => LoadLayout.Of(of, state).Bars.First(b => b.Wheel.IsRight).Room.Low;
        double middle = LoadLayout.Of(input, state).Sheet.Height / 2;
        Assert.True(Right(input) < middle && Right(input with { IsTurned = true }) > middle);
    }

    [Fact]
    public void Words_OverAndUnlike_AreSaidAndTruthOnlyWhereItIsShown()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = Loads(input, [19.7, 9.7, 15, 15, 15, 15, 15, 15]) with { Wrong = ImmutableSortedDictionary<string, string>.Empty.Add("first axle spring, right", "packed") };
        Assert.Equal(["Axle 1, right: 3.2\u202Ft more than it may carry.", "Axle 1: its left wheel carries 10.0\u202Ft less than its right one."], LoadWords.Of(input, state).Select(s => s.Replace('\u00A0', '\u202F')));
        Assert.Equal(["Spring, axle 1 right: packed."], LoadWords.Wrong(input, state));
        Assert.Empty(LoadWords.Wrong(input, state with { ShowTruth = false }));
        Assert.Empty(LoadWords.Of(input, state with { ShowTruth = false })); // no scale, so nothing is known
        Assert.Equal(["No wheel carries more than it may, and the two of each axle are alike."], LoadWords.Of(input, Loads(input, [15, 15, 15, 15, 15, 15, 15, 15])));
    }

    /// <summary>On a page without truth nothing of it is in the drawing: no number, no bar, no spring that is marked.</summary>
    [Fact]
    public void Render_WithoutTruth_HasOnlyWhatScalesShow()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = Loads(input, [19.7, 9.7, 15, 15, 15, 15, 15, 15]) with
        {
            Wrong = ImmutableSortedDictionary<string, string>.Empty.Add("first axle spring, right", "packed"),
            Masses = input.Masses.ToImmutableDictionary(m => m.Id, _ => 2345.0),
            Read = ImmutableDictionary<LoadWheel, double>.Empty.Add(new("second axle", true), 14_250),
        };
        LoadState hidden = state with { ShowTruth = false };
        string shown = LoadDrawing.Render(LoadLayout.Of(input, state), state), drawn = LoadDrawing.Render(LoadLayout.Of(input, hidden), hidden);
        Assert.Contains("truth-mark", shown, StringComparison.Ordinal); // 15 t where the scale shows 14.25 t
        Assert.Contains("packed", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("truth", drawn, StringComparison.Ordinal);
        Assert.DoesNotContain("packed", drawn, StringComparison.Ordinal);
        Assert.DoesNotContain("19.7", drawn, StringComparison.Ordinal);
        Assert.Contains("14.3", drawn, StringComparison.Ordinal);
    }

    private static LoadState Loads(LoadInput input, double[] tonnes) => LoadState.Unknown with
    {
        Real = input.Axles.SelectMany((a, i) => new[] { (new LoadWheel(a.Id, true), tonnes[2 * i]), (new LoadWheel(a.Id, false), tonnes[(2 * i) + 1]) }).ToImmutableDictionary(w => w.Item1, w => w.Item2 * 1000),
    };

    private static void Check(LoadInput input, LoadState state, LoadOptions options)
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
