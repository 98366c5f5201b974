namespace Sightglass.Network.Step;

/// <summary>Where one store's numbers stand in the arrays of a lane group.</summary>
/// <param name="Row">Row of its first amount.</param>
/// <param name="SecondRow">Row of its second amount, or −1.</param>
/// <param name="FirstParameter">Its first parameter.</param>
/// <param name="Cross">Where the two off-diagonal capacities stand, or −1.</param>
internal readonly record struct StoreIndex(int Row, int SecondRow, int FirstParameter, int Cross);
