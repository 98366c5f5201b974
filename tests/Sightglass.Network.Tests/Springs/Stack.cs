using Sightglass.Network.Compile;
using Sightglass.Network.Springs;

namespace Sightglass.Network.Tests.Springs;

/// <summary>
/// A car body on two bolsters, each on secondary springs on a frame, each on primary springs on two wheelsets, each on two wheels: nine bodies on top of each other.
/// Boxes are inside the wheels, so that a wheelset stands under one of them too. Dimensions are invented.
/// </summary>
internal sealed class Stack
{
    public static Shape Ordinary => new(2.1e6, 7e5, 1e6, 0, 0);

    public Stack(Shape shape)
    {
        SuspensionBuilder b = new();
        Body body = b.AddBody("body", 0, 0);
        Input weight = b.AddInput("weight of the body", shape.Weight);
        b.AddWeight(body, shape.X, shape.Y, weight);
        foreach (int end in new[] { -1, 1 })
        {
            double centre = 4.5 * end;
            Body bolster = b.AddBody($"bolster {end}", centre, 0);
            foreach (int side in new[] { -1, 1 })
            {
                b.AddSpring($"side bearer {end} {side}", body, bolster, centre, 0.8 * side, shape.Pivot);
            }

            // The pivot takes pitch between bolster and body, so that the bolster does not turn over.
            b.AddSpring($"pivot before {end}", body, bolster, centre - 0.2, 0, shape.Pivot, pulls: true);
            b.AddSpring($"pivot behind {end}", body, bolster, centre + 0.2, 0, shape.Pivot, pulls: true);
            Body frame = b.AddBody($"frame {end}", centre, 0);
            Input frameWeight = b.AddInput($"weight of frame {end}", 40e3);
            b.AddWeight(frame, centre, 0, frameWeight);
            foreach (int side in new[] { -1, 1 })
            {
                foreach (int place in new[] { -1, 1 })
                {
                    Input factor = b.AddInput($"secondary {end} {side} {place}", 1);
                    Softened.Add(factor);
                    b.AddSpring($"secondary {end} {side} {place}", bolster, frame, centre + (0.3 * place), 1.0 * side, shape.Secondary * shape.Stiffer, factor: factor);
                }
            }

            foreach (int place in new[] { -1, 1 })
            {
                Body axle = b.AddBody($"wheelset {end} {place}", centre + (1.3 * place), 0, Freedoms.Heave | Freedoms.Roll);
                foreach (int side in new[] { -1, 1 })
                {
                    Input factor = b.AddInput($"primary {end} {place} {side}", 1);
                    Softened.Add(factor);
                    b.AddSpring($"primary {end} {place} {side}", frame, axle, centre + (1.3 * place), 0.6 * side, shape.Primary * shape.Stiffer, factor: factor);
                    Wheels.Add(b.AddSpring($"wheel {end} {place} {side}", axle, null, centre + (1.3 * place), 0.75 * side, 1e9 * shape.Stiffer));
                    WheelPlaces.Add((centre + (1.3 * place), 0.75 * side));
                }
            }
        }

        Suspension = b.Build();
    }

    public Suspension Suspension { get; }

    public List<Spring> Wheels { get; } = [];

    public List<(double X, double Y)> WheelPlaces { get; } = [];

    public List<Input> Softened { get; } = [];

    public SuspensionState With(params (Input Input, double Value)[] set)
    {
        SuspensionState state = Suspension.NewState();
        double[] inputs = Suspension.NewInputs();
        foreach ((Input input, double value) in set)
        {
            inputs[input.Index] = value;
        }

        Suspension.Solve(inputs, state);
        return state;
    }

    /// <param name="Stiffer">Factor on the springs that carry.</param>
    /// <param name="X">m, where the body's weight is.</param>
    internal sealed record Shape(double Primary, double Secondary, double Weight, double X, double Y)
    {
        public double Stiffer { get; init; } = 1;

        /// <summary>N/m of what joins bolster and body.</summary>
        public double Pivot { get; init; } = 4e7;
    }
}
