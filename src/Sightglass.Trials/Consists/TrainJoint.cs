using System.Collections.Immutable;

namespace Sightglass.Trials.Consists;

/// <summary>What is between two vehicles of a train.</summary>
/// <param name="Ahead">Place in the train of the vehicle ahead; the other one follows.</param>
/// <param name="Lines">In the order in which they are coupled.</param>
public sealed record TrainJoint(int Ahead, ImmutableArray<JointLine> Lines);
