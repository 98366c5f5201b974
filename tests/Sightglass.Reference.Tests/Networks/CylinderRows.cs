using System.Text.Json.Serialization;

namespace Sightglass.Reference.Tests.Networks;

// Rows of a cylinder problem, named as in its file.

public sealed record CylinderRow(double RadiusM, double LengthM, [property: JsonPropertyName("floor_z_m")] double FloorZ, double StartLevelM);

/// <param name="B">The second tank, or −1 for the outside at height <paramref name="Z"/>.</param>
public sealed record CylinderOrificeRow(int A, int B, [property: JsonPropertyName("z_m")] double Z, [property: JsonPropertyName("cda_m2")] double CdaM2);

public sealed record InflowRow(int Tank, double FromS, double ToS, [property: JsonPropertyName("m3_per_s")] double M3PerS);
