using Sightglass.Basics.Time;

namespace Sightglass.World.Runs;

/// <summary>How a run ended, in a few dozen bytes.</summary>
/// <param name="Kind">Good, safe, bad, or neither.</param>
/// <param name="Mechanism">
/// What it failed of, in words from the book: <c>engine starves</c>, or what the card stopped with, numbers as its calculations: <c>leakage {P1 - P2}</c>; empty when done.
/// </param>
/// <param name="Step">The step under way.</param>
/// <param name="Time">When it ended.</param>
/// <param name="Hash">Of the whole trajectory.</param>
public readonly record struct Outcome(OutcomeKind Kind, string Mechanism, int Step, SimTime Time, ulong Hash);
