using Sightglass.World;

namespace Sightglass.Training.Debrief;

/// <summary>One thing that is done in a what-if, once the one before it is over.</summary>
/// <param name="After">Seconds to wait before.</param>
/// <param name="Does">By the trainee.</param>
public sealed record WhatIfAct(double After, WorldAction Does);
