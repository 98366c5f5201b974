using Sightglass.Cards.Programs;

namespace Sightglass.World.Runs;

/// <summary>A program for one thing that the card's letter may stand for.</summary>
/// <param name="When">What must be seen for it to be this one; null: always.</param>
/// <param name="Program">What is done then.</param>
public sealed record ProgramChoice(Condition? When, CardProgram Program);
