using System.Buffers.Binary;

namespace Sightglass.Training.Pictures;

/// <summary>PNG: chunks of a length, a name, data and a check sum (ISO/IEC 15948, clause 5). Kept are those that say how the picture looks.</summary>
internal static class PngFile
{
    private const int Around = 12;
    private static readonly string[] s_kept = ["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "sBIT"];

    private static ReadOnlySpan<byte> Signature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    public static bool IsOne(ReadOnlySpan<byte> file) => file.StartsWith(Signature);

    public static PictureFile? Clean(ReadOnlySpan<byte> file)
    {
        MemoryStream kept = new(file.Length);
        kept.Write(Signature);
        (long width, long height) = (0, 0);
        bool data = false;
        for (int at = Signature.Length; at + Around <= file.Length;)
        {
            uint length = BinaryPrimitives.ReadUInt32BigEndian(file[at..]);
            if (length > file.Length - at - Around)
            {
                return null;
            }

            ReadOnlySpan<byte> chunk = file.Slice(at, (int)length + Around);
            string name = System.Text.Encoding.Latin1.GetString(chunk.Slice(4, 4));
            if ((name == "IHDR") != (width == 0) || (name == "IHDR" && length != 13))
            {
                return null; // the first one, and only that
            }

            if (name == "IHDR")
            {
                (width, height) = (BinaryPrimitives.ReadUInt32BigEndian(chunk[8..]), BinaryPrimitives.ReadUInt32BigEndian(chunk[12..]));
            }

            data |= name == "IDAT";
            if (s_kept.Contains(name))
            {
                kept.Write(chunk);
            }

            if (name == "IEND")
            {
                return data ? new(kept.ToArray(), ".png", (int)Math.Min(width, int.MaxValue), (int)Math.Min(height, int.MaxValue)) : null;
            }

            at += chunk.Length;
        }

        return null;
    }
}
