namespace Sightglass.Basics.Tapes;

/// <summary>One operation on what earlier steps came to.</summary>
/// <param name="Op">The operation.</param>
/// <param name="A">Number of the step of the first operand; of a constant or leaf, its own number among them.</param>
/// <param name="B">Of the second, where there is one; of a table, its number.</param>
/// <param name="C">Of the third.</param>
internal readonly record struct TapeStep(TapeOp Op, int A, int B = 0, int C = 0);
