namespace Sightglass.Book.Model;

/// <summary>Where an item is in a picture, in shares of its width and height from the upper left corner, 0…1.</summary>
public sealed record PictureMark(string Item, double X, double Y, double Width, double Height);
