namespace Sightglass.Training.Pictures;

/// <summary>A picture whose file holds nothing but what is seen: no place, no time, no make of a camera, nothing behind its end.</summary>
/// <param name="Bytes">The file.</param>
/// <param name="Ending">Of its name, with the point.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
public sealed record PictureFile(byte[] Bytes, string Ending, int Width, int Height)
{
    /// <summary>Pixels a side.</summary>
    public const int Largest = 8192;

    /// <summary>Reads a JPEG, PNG or WebP file and takes out what is not the picture. The pixels are not decoded.</summary>
    /// <returns>Null where it is none of these, is broken off, or is larger than <see cref="Largest"/>.</returns>
    public static PictureFile? Clean(ReadOnlySpan<byte> file)
    {
        PictureFile? picture = JpegFile.IsOne(file) ? JpegFile.Clean(file) : PngFile.IsOne(file) ? PngFile.Clean(file) : WebPFile.IsOne(file) ? WebPFile.Clean(file) : null;
        return picture is { Width: > 0 and <= Largest, Height: > 0 and <= Largest } ? picture : null;
    }
}
