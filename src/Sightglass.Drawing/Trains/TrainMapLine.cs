using System.Collections.Immutable;

namespace Sightglass.Drawing.Trains;

/// <summary>A line along a train.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Medium">How it is drawn.</param>
/// <param name="Ends">Of each vehicle from the head: whether it has the line at its end towards the head, and towards the rear.</param>
/// <param name="Joints">Between each vehicle and the next.</param>
public sealed record TrainMapLine(string Name, string Medium, ImmutableArray<(bool Head, bool Rear)> Ends, ImmutableArray<JointMark> Joints);
