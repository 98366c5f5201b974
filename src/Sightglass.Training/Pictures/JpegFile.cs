using System.Buffers.Binary;

namespace Sightglass.Training.Pictures;

/// <summary>JPEG: segments of a marker and a length (ITU-T T.81, annex B). Kept are those that a decoder needs; application data and comments go.</summary>
internal static class JpegFile
{
    private const byte Start = 0xD8, End = 0xD9, Scan = 0xDA, Jfif = 0xE0, Adobe = 0xEE, Comment = 0xFE;

    public static bool IsOne(ReadOnlySpan<byte> file) => file.StartsWith((ReadOnlySpan<byte>)[0xFF, Start, 0xFF]);

    public static PictureFile? Clean(ReadOnlySpan<byte> file)
    {
        MemoryStream kept = new(file.Length);
        kept.Write(file[..2]);
        (int width, int height) = (0, 0);
        bool scanned = false;
        for (int at = 2; at + 4 <= file.Length || (at + 2 <= file.Length && file[at + 1] == End);)
        {
            byte marker = file[at + 1];
            if (file[at] != 0xFF)
            {
                return null;
            }

            if (marker == 0xFF)
            {
                at++; // fill bytes before a marker
                continue;
            }

            if (marker == End)
            {
                kept.Write(file.Slice(at, 2));
                return scanned && width > 0 ? new(kept.ToArray(), ".jpg", width, height) : null;
            }

            int length = BinaryPrimitives.ReadUInt16BigEndian(file[(at + 2)..]);
            if (length < 2 || at + 2 + length > file.Length)
            {
                return null;
            }

            ReadOnlySpan<byte> segment = file.Slice(at, 2 + length);
            if (IsFrame(marker) && length >= 8)
            {
                (height, width) = (BinaryPrimitives.ReadUInt16BigEndian(segment[5..]), BinaryPrimitives.ReadUInt16BigEndian(segment[7..]));
            }

            if (marker is not (> Jfif and <= 0xEF) and not Comment || marker == Adobe)
            {
                kept.Write(segment);
            }

            at += segment.Length;
            if (marker == Scan)
            {
                scanned = true;
                int next = EndOfScan(file, at);
                kept.Write(file[at..next]);
                at = next;
            }
        }

        return null; // broken off
    }

    /// <summary>SOF0…SOF15 without the tables that share their numbers.</summary>
    private static bool IsFrame(byte marker) => marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC);

    /// <summary>Where the next marker stands: in a scan 0xFF is followed by 0 or a restart.</summary>
    private static int EndOfScan(ReadOnlySpan<byte> file, int at)
    {
        while (at < file.Length)
        {
            int found = file[at..].IndexOf((byte)0xFF);
            if (found < 0 || at + found + 1 >= file.Length)
            {
                return file.Length;
            }

            at += found;
            if (file[at + 1] is not (0 or (>= 0xD0 and <= 0xD7)))
            {
                return at;
            }

            at += 2;
        }

        return file.Length;
    }
}
