using Sightglass.Plant.Calculators.Running;

namespace Sightglass.World.Hauls;

/// <summary>Where a train stands when its brakes are set at a place of the run, dynamic brake not counted.</summary>
/// <param name="Metres">From the start of the route, where the handle is moved.</param>
/// <param name="Speed">m/s there.</param>
/// <param name="Emergency">By the living air.</param>
/// <param name="EmergencyAtOnce">If the brakes were full at once: what the build-up costs is the difference.</param>
/// <param name="Service">Full service by the living air.</param>
public sealed record HaulStop(double Metres, double Speed, RouteStop Emergency, RouteStop EmergencyAtOnce, RouteStop Service);
