namespace Sightglass.Paper.Photos;

/// <summary>A numbered thing in a picture, in shares of its width and height from the upper left corner, 0…1.</summary>
/// <param name="Name">As it is read under the picture.</param>
public sealed record PhotoMark(int Number, string Name, double X, double Y, double Width, double Height);
