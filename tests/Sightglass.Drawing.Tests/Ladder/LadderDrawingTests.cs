using System.Xml.Linq;
using Sightglass.Book.Model;
using Sightglass.Drawing.Diagram;
using Sightglass.Drawing.Ladder;

namespace Sightglass.Drawing.Tests.Ladder;

public sealed class LadderDrawingTests
{
    private static readonly LadderLayout s_layout = LadderLayout.Of(LadderInput.Of(DemoBooks.Curlew, "battery and low voltage"));

    [Fact]
    public void Rails_OfTheDemo_AreTheBarAndTheMinusOfTheBattery() =>
        Assert.Equal(("low voltage bar", "battery negative"), s_layout.Input.Rails);

    /// <summary>A car is fed through a plug: what feeds most is above, not the joint of the loop at which most contacts meet.</summary>
    [Fact]
    public void Rails_OfACarWithoutASource_AreWhatFeedsItAndItsMinus()
    {
        ClassBook train = DemoBooks.Curlew.Coupled("local train");
        int car = train.Vehicles.Single(v => v.Name == "car 2").Index;
        Assert.Equal(("communication plus of car 2", "communication minus of car 2"), LadderInput.Of(train, "communication", car).Rails);
    }

    [Fact]
    public void Render_WithoutTruth_TellsNoVoltageAndNoCurrent()
    {
        LadderState state = LadderState.Still with { Volts = LadderState.Still.Volts.Add("low voltage bar", 74.2), Amperes = LadderState.Still.Amperes.Add("control computer", 5.4) };
        string shown = LadderDrawing.Render(s_layout, state);
        string hidden = LadderDrawing.Render(s_layout, state with { ShowTruth = false });
        Assert.Contains("74 V", shown, StringComparison.Ordinal);
        Assert.Contains("5.4 A", shown, StringComparison.Ordinal);
        Assert.DoesNotContain("74 V", hidden, StringComparison.Ordinal);
        Assert.DoesNotContain("5.4 A", hidden, StringComparison.Ordinal);
        Assert.DoesNotContain("flow on", hidden, StringComparison.Ordinal);
        Assert.DoesNotContain("live", hidden, StringComparison.Ordinal);
    }

    /// <summary>What a page sets of the difference is what it would have drawn.</summary>
    [Fact]
    public void Between_TwoStates_DrawsTheSecond()
    {
        LadderState after = LadderState.Still with
        {
            Volts = LadderState.Still.Volts.Add("low voltage bar", 66),
            Amperes = LadderState.Still.Amperes.Add("battery boxes", -20).Add("headlight, front", 9),
            Made = ["battery switch", "headlight breaker"],
            At = ["headlight, front"],
        };
        XDocument drawing = XDocument.Parse(LadderDrawing.Render(s_layout, LadderState.Still));
        Dictionary<string, XElement> byId = drawing.Descendants().Where(e => e.Attribute("id") is not null).ToDictionary(e => (string)e.Attribute("id")!, StringComparer.Ordinal);
        foreach (DiagramDelta delta in DiagramValues.Between(DiagramValues.Of(s_layout, LadderState.Still), DiagramValues.Of(s_layout, after)))
        {
            if (delta.Attribute == DiagramDelta.Text)
            {
                byId[delta.Id].Value = delta.Value;
            }
            else
            {
                byId[delta.Id].SetAttributeValue(delta.Attribute, delta.Value);
            }
        }

        Assert.Equal(XDocument.Parse(LadderDrawing.Render(s_layout, after)).ToString(), drawing.ToString());
    }
}
