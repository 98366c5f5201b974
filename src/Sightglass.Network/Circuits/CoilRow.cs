namespace Sightglass.Network.Circuits;

/// <param name="Branch">Its winding.</param>
/// <param name="Pick">V from which a coil that is down goes up.</param>
/// <param name="Drop">V up to which a coil that is up falls.</param>
/// <param name="Polarised">Whether only a voltage from A to B counts.</param>
internal readonly record struct CoilRow(string Name, int Branch, double Pick, double Drop, bool Polarised);
