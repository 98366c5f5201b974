namespace Sightglass.Network.Step;

/// <summary>
/// Index streams of a batch of paths of one law, path by path.
/// </summary>
/// <param name="Count">Paths.</param>
/// <param name="Potentials">Row of each potential.</param>
/// <param name="Inputs">Each input.</param>
/// <param name="FirstParameter">One a path.</param>
/// <param name="Rows">From row and to row of each flow (the dummy row where there is none).</param>
/// <param name="Stamps">For each flow and potential: matrix place in the from row, then in the to row (the dummy place where none).</param>
internal sealed record PathIndex(int Count, int[] Potentials, int[] Inputs, int[] FirstParameter, int[] Rows, int[] Stamps);
