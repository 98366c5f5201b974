using Sightglass.Network.Circuits;

namespace Sightglass.Network.Tests.Circuits;

/// <summary>What a broken control line does. Common practice, no source, except that voltages and currents are Ohm's.</summary>
public sealed class TrainlineTests
{
    private const int Last = 5;

    [Fact]
    public void Command_OverSixVehicles_PicksItsCoilInEachAndNoOther()
    {
        Trainline line = new(Last + 1);
        CircuitState s = line.With((line.Command(16), 1));
        for (int v = 0; v <= Last; v++)
        {
            for (int w = 1; w <= Trainline.Wires; w++)
            {
                Assert.Equal(w == 16, w is not (Trainline.Negative or Trainline.Positive) && s.IsUp(line.CoilOf(v, w)));
            }
        }

        Assert.InRange(s.Voltage(line.NodeOf(Last, 16)) - s.Voltage(line.NodeOf(Last, Trainline.Negative)), 73, 74);
        Assert.Empty(line.Circuit.FindingsOf(s));
    }

    /// <summary>Trade case 16: the wire that lets the engine run is open before a trailing unit: that unit and those behind it stay down.</summary>
    [Fact]
    public void OpenPin_InACommand_LeavesWhatIsBehindItDown()
    {
        Trainline line = new(Last + 1);
        CircuitState s = line.With((line.Command(16), 1), (line.Pin(3, 16), 0));
        Assert.Equal([true, true, true, false, false, false], Enumerable.Range(0, Last + 1).Select(v => s.IsUp(line.CoilOf(v, 16))));
    }

    /// <summary>A turned unit has forward and reverse crossed: commanded forward, all of the train pulls one way.</summary>
    [Fact]
    public void Forward_InATurnedVehicle_IsItsReverse()
    {
        Trainline line = new(3, turned: 1);
        CircuitState s = line.With((line.Command(Trainline.Forward), 1));
        Assert.Equal([true, false, true], Enumerable.Range(0, 3).Select(v => s.IsUp(line.CoilOf(v, Trainline.Forward))));
        Assert.Equal([false, true, false], Enumerable.Range(0, 3).Select(v => s.IsUp(line.CoilOf(v, Trainline.Reverse))));
    }

    /// <summary>
    /// The negative is open: behind it the commanded coil is fed back through all the others of its unit in parallel and the wires they lie on, and picks none the less.
    /// </summary>
    [Fact]
    public void OpenNegative_WithEveryOtherWireIdle_IsMadeGoodByASneakPath()
    {
        Trainline line = new(3);
        CircuitState s = line.With((line.Command(16), 1), (line.Pin(1, Trainline.Negative), 0));
        Assert.True(s.IsUp(line.CoilOf(0, 16)));

        // What is left is a sneak path: through coil 16 behind, then backwards through the coils of the 24 idle wires there, along those wires and forwards through the
        // same coils of the leader. Two such coils in series with 24 side by side: coil 16 has nearly all the voltage.
        double volts = s.Voltage(line.NodeOf(1, 16)) - s.Voltage(line.NodeOf(1, Trainline.Negative));
        double one = 800, others = (800.0 / 2 / 24) + (800.0 / 24);
        double expected = 74 * (one / 2) / ((one / 2) + others);
        Assert.Equal(expected, volts, 0.5);
        Assert.True(s.IsUp(line.CoilOf(1, 16)));
    }

    /// <summary>
    /// Half of the wires are commanded and the negative is open: at the loose negative the commanded coils pull up and the idle ones down. Millman: 12 of 24 pairs leave half
    /// the voltage, less than picks.
    /// </summary>
    [Fact]
    public void OpenNegative_WithHalfTheWiresLive_LeavesCoilsBetweenPickAndDrop()
    {
        Trainline line = new(2);
        int[] commanded = [.. Enumerable.Range(1, Trainline.Wires).Where(w => w is not (Trainline.Negative or Trainline.Positive)).Take(12)];
        CircuitState s = line.With([.. commanded.Select(w => (line.Command(w), 1.0)), (line.Pin(1, Trainline.Negative), 0)]);
        double volts = s.Voltage(line.NodeOf(1, commanded[0])) - s.Voltage(line.NodeOf(1, Trainline.Negative));
        double up = 12.0 / 800, down = 13.0 / 1600;
        Assert.Equal(74 * down / (up + down), volts, 0.1);
        Assert.InRange(volts, 15, 45);
        Assert.False(s.IsUp(line.CoilOf(1, commanded[0])));
        Assert.True(s.IsUp(line.CoilOf(0, commanded[0])));
    }

    [Fact]
    public void CrossedWires_InTheLastVehicle_AnswerTwoCommandsInAll()
    {
        Trainline line = new(3);
        CircuitState s = line.With((line.Command(3), 1), (line.Crossed, 1));
        Assert.All(Enumerable.Range(0, 3), v => Assert.True(s.IsUp(line.CoilOf(v, 3)) && s.IsUp(line.CoilOf(v, 7))));
    }

    /// <summary>One short to the frame of a system that floats on its detector moves both poles and stops nothing; a second, on the other pole, closes a loop.</summary>
    [Fact]
    public void Shorts_ToTheFrame_FirstShiftThePolesThenCarryCurrent()
    {
        Trainline line = new(3);
        CircuitState whole = line.With((line.Command(16), 1));
        Assert.Equal(37, whole.Voltage(line.NodeOf(0, Trainline.Positive)), 0.1);
        CircuitState one = line.With((line.Command(16), 1), (line.Short(2, 16), 1));
        Assert.Equal(0, one.Voltage(line.NodeOf(2, 16)), 0.1);
        Assert.True(one.IsUp(line.CoilOf(2, 16)));
        CircuitState two = line.With((line.Command(16), 1), (line.Short(2, 16), 1), (line.Short(0, Trainline.Negative), 1));
        double amperes = (two.Voltage(line.NodeOf(0, Trainline.Positive)) - two.Voltage(line.NodeOf(0, Trainline.Negative)) - 74) / -0.03;
        double loop = 74 / (0.03 + 0.01 + (2 * 0.02) + (2 * 0.005) + 1.0);
        Assert.Equal(loop, amperes, 0.3);
    }

    /// <summary>Trade case 17: 64 V at rest, 30 mΩ, 900 A: 37 V, and coils that pick at 45 V fall or stay by whether they were up.</summary>
    [Fact]
    public void Battery_Cranking_SagsBelowWhatPicksACoil()
    {
        CircuitBuilder b = new();
        Node ground = DirectCurrentTests.Ground(b);
        Node top = DirectCurrentTests.Supply(b, ground, 64, 0.030);
        b.AddResistance("starter", top, ground, 37.0 / 900);
        Coil coil = b.AddCoil("relay", top, ground, 1e6, 45, 38);
        Circuit circuit = b.Build();
        CircuitState s = circuit.NewState();
        s.Set(coil, true);
        circuit.Solve(circuit.NewInputs(), s);
        Assert.Equal(37, s.Voltage(top), 0.01);
        Assert.False(s.IsUp(coil));
    }
}
