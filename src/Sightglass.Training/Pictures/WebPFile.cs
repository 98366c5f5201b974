using System.Buffers.Binary;

namespace Sightglass.Training.Pictures;

/// <summary>WebP: RIFF chunks of a name, a length and data (RFC 9649, sections 2.3 to 2.7). Kept are those with pixels; the flags say so.</summary>
internal static class WebPFile
{
    private const byte Exif = 0x08, Xmp = 0x04, Profile = 0x20;

    public static bool IsOne(ReadOnlySpan<byte> file) => file.Length >= 16 && file.StartsWith("RIFF"u8) && file[8..].StartsWith("WEBP"u8);

    public static PictureFile? Clean(ReadOnlySpan<byte> file)
    {
        long end = 8L + BinaryPrimitives.ReadUInt32LittleEndian(file[4..]);
        if (end > file.Length)
        {
            return null;
        }

        MemoryStream kept = new();
        (int width, int height) = (0, 0);
        bool pixels = false;
        for (int at = 12; at + 8 <= end;)
        {
            long length = BinaryPrimitives.ReadUInt32LittleEndian(file[(at + 4)..]);
            if (at + 8 + length > end)
            {
                return null;
            }

            byte[] chunk = file.Slice(at, 8 + (int)length).ToArray();
            ReadOnlySpan<byte> body = chunk.AsSpan(8);
            string name = System.Text.Encoding.Latin1.GetString(chunk, 0, 4);
            switch (name)
            {
                case "VP8X" when body.Length >= 10:
                    chunk[8] &= unchecked((byte)~(Exif | Xmp | Profile));
                    (width, height) = (1 + Three(body[4..]), 1 + Three(body[7..]));
                    break;
                case "VP8 " when body.Length >= 10 && width == 0:
                    (width, height) = (BinaryPrimitives.ReadUInt16LittleEndian(body[6..]) & 0x3FFF, BinaryPrimitives.ReadUInt16LittleEndian(body[8..]) & 0x3FFF);
                    break;
                case "VP8L" when body.Length >= 5 && width == 0:
                    uint bits = BinaryPrimitives.ReadUInt32LittleEndian(body[1..]);
                    (width, height) = (1 + (int)(bits & 0x3FFF), 1 + (int)((bits >> 14) & 0x3FFF));
                    break;
            }

            pixels |= name is "VP8 " or "VP8L" or "ANMF";
            if (name is "VP8X" or "VP8 " or "VP8L" or "ALPH" or "ANIM" or "ANMF")
            {
                kept.Write(chunk);
                if (chunk.Length % 2 == 1)
                {
                    kept.WriteByte(0);
                }
            }

            at += chunk.Length + (chunk.Length % 2);
        }

        return pixels ? new(Riff(kept), ".webp", width, height) : null;
    }

    private static byte[] Riff(MemoryStream chunks)
    {
        byte[] file = new byte[12 + chunks.Length];
        "RIFF"u8.CopyTo(file);
        BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(4), (uint)(4 + chunks.Length));
        "WEBP"u8.CopyTo(file.AsSpan(8));
        chunks.ToArray().CopyTo(file, 12);
        return file;
    }

    private static int Three(ReadOnlySpan<byte> bytes) => bytes[0] | (bytes[1] << 8) | (bytes[2] << 16);
}
