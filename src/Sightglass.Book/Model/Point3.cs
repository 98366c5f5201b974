namespace Sightglass.Book.Model;

/// <summary>A position in the class's axes, metres: x from the front pulling face rearward, y to the right facing forward, z above rail.</summary>
public readonly record struct Point3(double X, double Y, double Z);
