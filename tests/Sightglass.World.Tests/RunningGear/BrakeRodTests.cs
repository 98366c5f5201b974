using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;
using Sightglass.Plant.Plans;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.RunningGear;

/// <summary>A rod of the brake that has come apart: pressure and window as before, half of the force gone.</summary>
public sealed class BrakeRodTests
{
    /// <summary>Two rods with half of the force each (statics); what a broken one takes along: common practice, no source.</summary>
    [Fact]
    public void Rod_Broken_TakesItsShareOfTheForceAndNothingElse()
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        double shoes = rig.At(1, "shoe force of front brake cylinders"), holds = rig.At(1, "retarding force of front brake cylinders");
        double piston = rig.At(1, "force of front brake cylinders"), rear = rig.At(1, "shoe force of rear brake cylinders");
        Assert.True(shoes > 10_000);
        rig.Break(2, "front tie rod, right", "broken");
        Assert.Equal(shoes / 2, rig.At(3, "shoe force of front brake cylinders"), shoes / 1000);
        Assert.Equal(holds / 2, rig.At(3, "retarding force of front brake cylinders"), holds / 1000);
        Assert.Equal(piston, rig.At(3, "force of front brake cylinders"), piston / 1000);
        Assert.Equal(rear, rig.At(3, "shoe force of rear brake cylinders"), rear / 1000);
        Assert.True(rig.Reads(3, "brake indicator, front right") > 40 * 6894); // the window says set
        rig.Break(4, "front tie rod, left", "broken");
        Assert.Equal(0, rig.At(5, "shoe force of front brake cylinders"), 1e-6);
    }

    [Fact]
    public void Rod_Broken_IsSeenFromItsSideAndForbidsToMove()
    {
        using Rig rig = new(Books.Curlew, "standing with air");
        double Sign(double at, string side) => rig.At(at, w => w.Value(rig.Plan.Signs[$"a tie rod is seen to hang at the front truck, {side}"]));
        Assert.True(Sign(1, "right") < 0 && rig.At(1, w => w.Value(rig.Plan.Hazards["moved with a rod that hangs"])) < 0);
        rig.Break(2, "front tie rod, right", "broken");
        Assert.True(Sign(3, "right") >= 0 && Sign(3, "left") < 0);
        Assert.True(rig.At(3, w => w.Value(rig.Plan.Hazards["moved with a rod that hangs"])) >= 0);
        Assert.True(rig.At(3, w => w.Value(rig.Plan.Facts["the rods of the front truck are whole"])) < 0);
    }

    [Theory]
    [InlineData("by way of: [cab switch]", "P056")]
    [InlineData("by way of: [one rod, other rod, third rod]", "P057")]
    public void Cylinder_RodsThatCannotBe_AreErrors(string way, string code)
    {
        DiagnosticList found = new();
        string text = $$"""
            book: Rods
            length: 20 m
            places: { cab: { x: 5 m, y: 2.4 m } }
            roles: { hand: { walks: 1.3 m/s } }
            items:
              cab switch: { kind: switch, who: [hand], places: [cab] }
              one rod: { kind: brake rod }
              other rod: { kind: brake rod }
              third rod: { kind: brake rod, share: 1 % }
              cylinders: { kind: brake cylinder, diameter: 200 mm, travel: 85 mm, {{way}} }
            """;
        ClassBook? book = BookReader.Read([new SourceText("book.yaml", text)], [], KindLibrary.Catalog, found);
        Assert.True(book is not null, string.Join('\n', found));
        PlanCompiler.Compile(book, found);
        Assert.Contains(found, d => d.Code == code);
    }
}
