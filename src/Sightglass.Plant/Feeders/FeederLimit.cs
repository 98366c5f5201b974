using Sightglass.Network.Compile;
using Sightglass.Network.Phasors;

namespace Sightglass.Plant.Feeders;

/// <summary>A source that gives no more than a current: what it asks too much of, it lowers its voltage for.</summary>
/// <param name="Force">Input with its voltage.</param>
/// <param name="Line">From it into the feeder.</param>
/// <param name="Amperes">The most in any wire.</param>
internal readonly record struct FeederLimit(Input Force, Line Line, double Amperes);
