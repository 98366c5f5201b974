namespace Sightglass.Network.Circuits;

/// <param name="Branch">From anode to cathode; its conductance is that of leaking.</param>
/// <param name="Drop">V from which it conducts.</param>
/// <param name="Conductance">S added while it conducts.</param>
internal readonly record struct DiodeRow(int Branch, double Drop, double Conductance);
