using System.Collections.Immutable;
using Sightglass.Drawing.Loads;

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
        LoadState state = LoadGeometry.Loads(input, [14, 15, 12, 17, 9, 20, 15.5, 15]);
        LoadGeometry.Check(input, state, s_options[how]);
        LoadLayout layout = LoadLayout.Of(input, state, s_options[how]);
        Assert.Equal(2, layout.Bars.Count(b => b.Over > 0)); // 17 t and 20 t of 16.5 t
        Assert.All(layout.Bars, b => Assert.NotNull(b.Limit));
    }

    [Fact]
    public void Bars_Turned_HaveTheirRightOnTheOtherSide()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = LoadGeometry.Loads(input, [14, 15, 14, 15, 14, 15, 14, 15]);
        double Right(LoadInput of) => LoadLayout.Of(of, state).Bars.First(b => b.Wheel.IsRight).Room.Low;
        double middle = LoadLayout.Of(input, state).Sheet.Height / 2;
        Assert.True(Right(input) < middle && Right(input with { IsTurned = true }) > middle);
    }

    [Fact]
    public void Words_OverAndUnlike_AreSaidAndTruthOnlyWhereItIsShown()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = LoadGeometry.Loads(input, [19.7, 9.7, 15, 15, 15, 15, 15, 15]) with { Wrong = ImmutableSortedDictionary<string, string>.Empty.Add("first axle spring, right", "packed") };
        Assert.Equal(["Axle 1, right: 3.2\u202Ft more than it may carry.", "Axle 1: its left wheel carries 10.0\u202Ft less than its right one."], LoadWords.Of(input, state).Select(s => s.Replace('\u00A0', '\u202F')));
        Assert.Equal(["Spring, axle 1 right: packed."], LoadWords.Wrong(input, state));
        Assert.Empty(LoadWords.Wrong(input, state with { ShowTruth = false }));
        Assert.Empty(LoadWords.Of(input, state with { ShowTruth = false })); // no scale, so nothing is known
        Assert.Equal(["No wheel carries more than it may, and the two of each axle are alike."], LoadWords.Of(input, LoadGeometry.Loads(input, [15, 15, 15, 15, 15, 15, 15, 15])));
    }

    /// <summary>On a page without truth nothing of it is in the drawing: no number, no bar, no spring that is marked.</summary>
    [Fact]
    public void Render_WithoutTruth_HasOnlyWhatScalesShow()
    {
        LoadInput input = LoadInput.Of(DemoBooks.Curlew, "trucks");
        LoadState state = LoadGeometry.Loads(input, [19.7, 9.7, 15, 15, 15, 15, 15, 15]) with
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
}
