namespace Sightglass.Network.Step;

/// <summary>
/// Index streams of a batch of paths of one law, path by path.
/// </summary>
/// <param name="Count">Paths.</param>
/// <param name="Potentials">Row of each potential.</param>
/// <param name="Inputs">Each input.</param>
/// <param name="FirstParameter">One a path.</param>
/// <param name="FirstFlow">Where the batch's flows begin among all.</param>
/// <param name="FirstSlope">Where its slopes begin among all: for each flow, one by each potential.</param>
internal sealed record PathIndex(int Count, IndexStream Potentials, IndexStream Inputs, IndexStream FirstParameter, int FirstFlow, int FirstSlope);
