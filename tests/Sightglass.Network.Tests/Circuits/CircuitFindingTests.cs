using Sightglass.Network.Circuits;
using Sightglass.Network.Compile;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>What is wrong is told; nothing throws and no voltage is not a number.</summary>
public sealed class CircuitFindingTests
{
    [Fact]
    public void Circuit_WithoutASource_IsDeadAndSaysSo()
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node a = b.AddNode("a");
        b.AddResistance("lamp", a, ground, 10);
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal([new(CircuitFindingKind.NoSource, "")], s.Circuit.FindingsOf(s));
        Assert.Equal(0, s.Voltage(a));
    }

    /// <summary>A source whose part touches nothing that is held still drives its own loop; a part without a source is only dead.</summary>
    [Fact]
    public void Part_WithASourceAndNothingHeld_FloatsButDrivesItsLoop()
    {
        CircuitBuilder b = new();
        DirectCurrentTests.Ground(b);
        Node minus = b.AddNode("minus");
        Node plus = b.AddNode("plus");
        b.AddSource("cell", minus, plus, 1, b.AddInput("volts", 12));
        Branch lamp = b.AddResistance("lamp", plus, minus, 5);
        Node loose = b.AddNode("loose");
        b.AddResistance("stub", loose, b.AddNode("its end"), 1);
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal(2, s.Current(lamp), 1e-12);
        CircuitFinding found = Assert.Single(s.Circuit.FindingsOf(s));
        Assert.Equal(CircuitFindingKind.Floating, found.Kind);
        Assert.Contains(found.Name, new[] { "minus", "plus" });
        Assert.False(s.IsHeld(plus));
    }

    [Fact]
    public void Node_GivenTwoPotentials_KeepsTheFirstAndSaysSo()
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node wire = b.AddNode("wire");
        b.Hold(wire, b.AddInput("one", 74));
        b.Hold(wire, b.AddInput("other", 64));
        Branch lamp = b.AddResistance("lamp", wire, ground, 37);
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal([new(CircuitFindingKind.Contradiction, "wire")], s.Circuit.FindingsOf(s));
        Assert.Equal(2, s.Current(lamp), 1e-12);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Input_ThatIsNoNumber_CountsAsNothingAndSaysSo(double value)
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node top = DirectCurrentTests.Supply(b, ground, 12, 1);
        b.AddResistance("lamp", top, ground, 1, b.AddInput("switch", value));
        CircuitState s = DirectCurrentTests.Solved(b.Build());
        Assert.Equal([new(CircuitFindingKind.NotFinite, "switch")], s.Circuit.FindingsOf(s));
        Assert.Equal(12, s.Voltage(top), 1e-12);
    }

    /// <summary>An open breaker leaves a part that nothing holds and no source feeds: its voltage is 0 and nothing is wrong.</summary>
    [Fact]
    public void Part_BehindAnOpenBreaker_IsDeadAndNothingIsWrong()
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node top = DirectCurrentTests.Supply(b, ground, 64, 0.03);
        Input breaker = b.AddInput("breaker", 1);
        Node after = b.AddNode("after");
        b.AddResistance("breaker", top, after, 0.001, breaker);
        Branch lamp = b.AddResistance("lamp", after, ground, 40);
        Circuit circuit = b.Build();
        CircuitState s = DirectCurrentTests.Solved(circuit);
        Assert.InRange(s.Current(lamp), 1.59, 1.6);
        double[] inputs = circuit.NewInputs();
        inputs[breaker.Index] = 0;
        circuit.Solve(inputs, s);
        Assert.Equal(0, s.Voltage(after));
        Assert.Equal(64, s.Voltage(top), 1e-12);
        Assert.Empty(circuit.FindingsOf(s));
    }

    [Fact]
    public void Solve_AfterTheFirst_AllocatesNothing()
    {
        Trainline line = new(vehicles: 6);
        CircuitState s = line.Circuit.NewState();
        double[] inputs = line.Circuit.NewInputs();
        line.Circuit.Solve(inputs, s);
        double[] other = [.. inputs];
        other[line.Command(8).Index] = 1;
        line.Circuit.Solve(other, s);
        long before = GC.GetAllocatedBytesForCurrentThread();
        line.Circuit.Solve(inputs, s);
        line.Circuit.Solve(other, s);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }
}
