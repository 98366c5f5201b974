namespace Sightglass.Network.Phasors;

/// <summary>What a load flow came to, and the room in which it was worked out. It remembers nothing: everything follows from the inputs.</summary>
public sealed class FlowState
{
    internal FlowState(LoadFlow flow, int places)
    {
        Flow = flow;
        Given = new double[flow.Inputs];
        BadInputs = new bool[flow.Inputs];
        Volts = new Phasor[flow.Terminals];
        Live = new bool[flow.Terminals];
        Joined = new bool[flow.Terminals];
        Parents = new int[flow.Terminals];
        Values = new Phasor[flow.Terminals];
        Driven = new Phasor[flow.Terminals];
        Diagonals = new Phasor[flow.Terminals];
        Shares = new Phasor[places];
        Admittances = new Phasor[flow.AdmittancePlaces];
        Hanging = new bool[flow.Loads];
        Below = new bool[flow.Loads];
        Raised = new bool[flow.Loads];
        Stamps = new Phasor[flow.Loads];
        Powers = new Phasor[flow.Loads];
        Amperes = new Phasor[flow.Loads];
        FirstVolts = new double[flow.Loads];
    }

    public LoadFlow Flow { get; }

    public FlowOutcome Outcome { get; internal set; }

    /// <summary>How many times the voltages were corrected.</summary>
    public int Iterations { get; internal set; }

    /// <summary>V to the frame; 0 where nothing feeds.</summary>
    public ReadOnlySpan<Phasor> Voltages => Volts;

    /// <summary>W and var that the loads draw together.</summary>
    public Phasor Drawn { get; internal set; }

    /// <summary>W and var that the lines turn into heat and store.</summary>
    public Phasor Lost { get; internal set; }

    /// <summary>W and var that come from the terminals whose voltage is given.</summary>
    public Phasor Fed { get; internal set; }

    internal double[] Given { get; }

    internal bool[] BadInputs { get; }

    internal Phasor[] Volts { get; }

    internal bool[] Live { get; }

    /// <summary>Terminals that wires and loads join to one that is held, be it at 0 V.</summary>
    internal bool[] Joined { get; }

    internal int[] Parents { get; }

    internal Phasor[] Values { get; }

    /// <summary>What is driven in at every iteration alike, by position.</summary>
    internal Phasor[] Driven { get; }

    internal Phasor[] Diagonals { get; }

    internal Phasor[] Shares { get; }

    /// <summary>Of the lines, one matrix after the other.</summary>
    internal Phasor[] Admittances { get; }

    /// <summary>Loads of which an end is held by loads alone.</summary>
    internal bool[] Hanging { get; }

    /// <summary>Loads with less voltage than they keep their power or current at.</summary>
    internal bool[] Below { get; }

    /// <summary>Loads that were below and no longer are: once, so that none goes to and fro.</summary>
    internal bool[] Raised { get; }

    /// <summary>Admittance by which each load stands in the matrix.</summary>
    internal Phasor[] Stamps { get; }

    internal Phasor[] Powers { get; }

    internal Phasor[] Amperes { get; }

    internal double[] FirstVolts { get; }

    /// <summary>The load whose voltage fell furthest; −1 for none.</summary>
    internal int Worst { get; set; }

    public Phasor Voltage(Terminal terminal) => Volts[terminal.Index];

    /// <summary>Whether a terminal is joined to one with a voltage that is given and not 0.</summary>
    public bool IsLive(Terminal terminal) => Live[terminal.Index];

    /// <summary>A in a wire of a line, positive from its first end to its second, on the second side where it has a ratio.</summary>
    public Phasor Current(Line line, int wire) => Flow.CurrentOf(line.Index, wire, this);

    /// <summary>A drawn by a load.</summary>
    public Phasor Current(Load load) => Amperes[load.Index];

    /// <summary>W and var drawn by a load.</summary>
    public Phasor Power(Load load) => Flow.AcrossLoad(load.Index, this) * Amperes[load.Index].Conjugate;

    /// <summary>V across a load.</summary>
    public Phasor Voltage(Load load) => Flow.AcrossLoad(load.Index, this);
}
