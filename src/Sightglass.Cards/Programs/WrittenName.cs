using Sightglass.Basics.Quantities;

namespace Sightglass.Cards.Programs;

/// <summary>A name that <c>Read … as NAME</c> gives to a number; its index is its place in <see cref="CardProgram.Names"/>.</summary>
/// <param name="Unit">The instrument's unit, in which the number is said.</param>
/// <param name="Resolution">The instrument's least step, SI.</param>
public sealed record WrittenName(string Name, Unit Unit, double Resolution);
