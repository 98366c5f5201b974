namespace Sightglass.Network.Springs;

/// <summary>How bodies came to stand, and the room in which it was worked out. It remembers nothing: everything follows from the inputs.</summary>
public sealed class SuspensionState
{
    internal SuspensionState(Suspension suspension, int coordinates)
    {
        Suspension = suspension;
        Given = new double[suspension.Inputs];
        BadInputs = new bool[suspension.Inputs];
        Moves = new double[coordinates];
        Loads = new double[coordinates];
        Matrix = new double[coordinates * (coordinates + 1) / 2];
        Whole = new double[coordinates];
        Loose = new bool[coordinates];
        Newtons = new double[suspension.Springs];
        Carries = new bool[suspension.Springs];
    }

    public Suspension Suspension { get; }

    public StandOutcome Outcome { get; internal set; }

    /// <summary>N that each spring presses with; below 0 where one pulls.</summary>
    public ReadOnlySpan<double> Forces => Newtons;

    /// <summary>How many times the equations were solved for the last result.</summary>
    public int Rounds { get; internal set; }

    internal double[] Given { get; }

    internal bool[] BadInputs { get; }

    internal double[] Moves { get; }

    internal double[] Loads { get; }

    /// <summary>Lower triangle, row by row.</summary>
    internal double[] Matrix { get; }

    /// <summary>The diagonal before elimination.</summary>
    internal double[] Whole { get; }

    internal bool[] Loose { get; }

    internal double[] Newtons { get; }

    internal bool[] Carries { get; }

    public double Force(Spring spring) => Newtons[spring.Index];

    /// <summary>m by which a point of a body has gone down.</summary>
    public double Sag(Body body, double x, double y) => Suspension.SagOf(body.Index, x, y, this);
}
