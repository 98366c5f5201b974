using System.Collections.Immutable;
using System.Xml.Linq;
using Sightglass.Drawing.Diagram;

namespace Sightglass.Drawing.Tests.Diagram;

public sealed class DiagramValuesTests
{
    private static readonly DiagramLayout _layout = DiagramLayout.Of(DiagramInput.Of(DemoBooks.Curlew, "fuel"));

    [Fact]
    public void Between_TheSameState_IsNothing() =>
        Assert.Empty(DiagramValues.Between(DiagramValues.Of(_layout, DiagramState.Still), DiagramValues.Of(_layout, DiagramState.Still)));

    [Fact]
    public void Between_OneValveClosed_TellsThatValveAlone()
    {
        DiagramState closed = DiagramState.Still with { Openings = DiagramState.Still.Openings.Add("aft supply valve", 0) };
        ImmutableArray<DiagramDelta> deltas = DiagramValues.Between(DiagramValues.Of(_layout, DiagramState.Still), DiagramValues.Of(_layout, closed));
        Assert.Equal(["aria-checked", "class"], deltas.Select(d => d.Attribute));
        Assert.All(deltas, d => Assert.Equal("it-aft-supply-valve", d.Id));
    }

    // The drawing of a state and the drawing of another one brought up to date by deltas are the same.
    [Fact]
    public void Between_AnyTwoStates_BringsADrawingUpToDate()
    {
        DiagramState after = DiagramState.Still with
        {
            Levels = DiagramState.Still.Levels.Add("aft compartment", 0.4),
            Amounts = DiagramState.Still.Amounts.Add("aft compartment", "920 L"),
            Flows = DiagramState.Still.Flows.Add("aft supply valve", 2).Add("pressure regulator", 1).Add("engine", 1),
            Readings = DiagramState.Still.Readings.Add("aft sight glass, right", new DiagramReading("32 cm", 0.4)),
            Machines = DiagramState.Still.Machines.Add("engine", new DiagramMachine(true, "notch 1", "48 L/h")),
            Leaks = DiagramState.Still.Leaks.Add("aft compartment", new DiagramLeak("leak, 4 mm")),
        };
        XDocument drawing = XDocument.Parse(DiagramDrawing.Render(_layout, DiagramState.Still));
        foreach (DiagramDelta delta in DiagramValues.Between(DiagramValues.Of(_layout, DiagramState.Still), DiagramValues.Of(_layout, after)))
        {
            XElement element = drawing.Descendants().Single(e => (string?)e.Attribute("id") == delta.Id);
            if (delta.Attribute == DiagramDelta.Text)
            {
                element.Value = delta.Value;
            }
            else
            {
                element.SetAttributeValue(delta.Attribute, delta.Value);
            }
        }

        Assert.Equal(XDocument.Parse(DiagramDrawing.Render(_layout, after)).ToString(), drawing.ToString());
    }

    [Fact]
    public void Of_FlowAgainstThePath_RunsBackwards()
    {
        DiagramState state = DiagramState.Still with { Flows = DiagramState.Still.Flows.Add("aft supply valve", -1) };
        Assert.Equal("flow on rev", DiagramValues.Of(_layout, state)["fl-aft-supply-valve", "class"]);
    }
}
