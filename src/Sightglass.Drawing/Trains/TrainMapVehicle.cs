namespace Sightglass.Drawing.Trains;

/// <summary>A vehicle of a train on its map.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Kind">What it is, in few words.</param>
/// <param name="Length">Metres.</param>
/// <param name="IsLead">Whether the train is led from it.</param>
public sealed record TrainMapVehicle(string Name, string Kind, double Length, bool IsLead = false);
