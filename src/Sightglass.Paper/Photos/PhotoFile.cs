using System.Text;
using System.Xml;
using Sightglass.Paper.Vectors;
using Sightglass.Training.Pictures;

namespace Sightglass.Paper.Photos;

/// <summary>The file of a picture.</summary>
/// <param name="Bytes">As it lies there.</param>
/// <param name="Sort">Told by what is in it, not by its name.</param>
/// <param name="Width">Pixels.</param>
/// <param name="Height">Pixels.</param>
public sealed record PhotoFile(byte[] Bytes, PhotoSort Sort, double Width, double Height)
{
    /// <summary>Its type, as a page is told it.</summary>
    public string Type => Sort switch { PhotoSort.Svg => "image/svg+xml", PhotoSort.Jpeg => "image/jpeg", PhotoSort.Png => "image/png", _ => "image/webp" };

    /// <summary>A drawing as text; null for pixels.</summary>
    public string? Svg => Sort == PhotoSort.Svg ? Encoding.UTF8.GetString(Bytes) : null;

    /// <summary>Reads a JPEG, PNG, WebP or SVG file; null where it is none of these or is broken.</summary>
    public static PhotoFile? Read(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        if (PictureFile.Clean(bytes) is { } pixels)
        {
            return new(pixels.Bytes, pixels.Ending switch { ".jpg" => PhotoSort.Jpeg, ".png" => PhotoSort.Png, _ => PhotoSort.WebP }, pixels.Width, pixels.Height);
        }

        try
        {
            (double width, double height) = SvgPainter.SizeOf(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF'));
            return width > 1 && height > 1 ? new(bytes, PhotoSort.Svg, width, height) : null;
        }
        catch (Exception e) when (e is XmlException or FormatException)
        {
            return null;
        }
    }
}
