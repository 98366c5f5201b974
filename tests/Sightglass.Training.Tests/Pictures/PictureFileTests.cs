using System.Buffers.Binary;
using System.Text;
using Sightglass.Training.Pictures;

namespace Sightglass.Training.Tests.Pictures;

public sealed class PictureFileTests
{
    /// <summary>A grey pixel, progressive, without application data but JFIF's own (made elsewhere, from memory), with its end marker.</summary>
    private static readonly byte[] s_jpeg = [.. Convert.FromBase64String("/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wgALCAABAAEBAREA/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/aAAgBAQABPxA="), 0xFF, 0xD9];

    /// <summary>A pixel, lossless (made elsewhere, from memory).</summary>
    private static readonly byte[] s_webp = Convert.FromBase64String("UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==");

    private static readonly byte[] s_secret = Encoding.ASCII.GetBytes("Exif\0\0 52.0 N 13.0 E, camera of Brandt");

    /// <summary>ITU-T T.81, annex B: application segments and comments are no part of the picture; what stands behind the end marker is not either.</summary>
    [Fact]
    public void Clean_JpegWithPlaceAndComment_IsThePictureAlone()
    {
        byte[] told = [.. s_jpeg[..2], .. Segment(0xE1), .. s_jpeg[2..20], .. Segment(0xFE), .. Segment(0xED), .. s_jpeg[20..], .. s_secret];
        PictureFile clean = PictureFile.Clean(told)!;
        Assert.Equal(s_jpeg, clean.Bytes);
        Assert.Equal((".jpg", 1, 1), (clean.Ending, clean.Width, clean.Height));
    }

    /// <summary>ISO/IEC 15948, clause 11.3: text, time and Exif stand in chunks of their own.</summary>
    [Fact]
    public void Clean_PngWithTextAndTime_IsThePictureAlone()
    {
        byte[] png = File.ReadAllBytes(Path.Combine(Root(), "docs", "tour", "walk.png"));
        PictureFile plain = PictureFile.Clean(png)!;
        byte[] told = [.. png[..33], .. Chunk("tEXt"), .. Chunk("eXIf"), .. Chunk("tIME"), .. png[33..], .. s_secret];
        PictureFile clean = PictureFile.Clean(told)!;
        Assert.Equal(plain.Bytes, clean.Bytes);
        Assert.Equal(BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)), clean.Width);
        Assert.DoesNotContain("Brandt", Encoding.Latin1.GetString(clean.Bytes), StringComparison.Ordinal);
    }

    /// <summary>RFC 9649, section 2.7: EXIF and XMP are chunks of their own, and the extended header has a flag for each.</summary>
    [Fact]
    public void Clean_WebPWithExif_IsThePictureAlone()
    {
        byte[] extended = [.. "VP8X"u8, 10, 0, 0, 0, 0x0C, 0, 0, 0, 0, 0, 0, 0, 0, 0];
        byte[] chunks = [.. "WEBP"u8, .. extended, .. s_webp[12..], .. RiffChunk("EXIF"), .. RiffChunk("XMP ")];
        byte[] size = new byte[4];
        BinaryPrimitives.WriteInt32LittleEndian(size, chunks.Length);
        PictureFile clean = PictureFile.Clean([.. "RIFF"u8, .. size, .. chunks])!;
        Assert.Equal((".webp", 1, 1), (clean.Ending, clean.Width, clean.Height));
        Assert.Equal(0, clean.Bytes[20]);
        Assert.DoesNotContain("Brandt", Encoding.Latin1.GetString(clean.Bytes), StringComparison.Ordinal);
        Assert.Equal(clean.Bytes, PictureFile.Clean(clean.Bytes)!.Bytes);
        Assert.Equal(s_webp, PictureFile.Clean(s_webp)!.Bytes);
    }

    [Fact]
    public void Clean_WhatIsNoWholePicture_IsRefused()
    {
        Assert.Null(PictureFile.Clean("<svg onload=alert(1)>"u8));
        Assert.Null(PictureFile.Clean([]));
        Assert.Null(PictureFile.Clean("GIF89a"u8));
        byte[] wide = [.. s_jpeg];
        int frame = wide.AsSpan().IndexOf((ReadOnlySpan<byte>)[0xFF, 0xC2]);
        wide[frame + 7] = 0xFF; // 65,281 pixels wide: a small file that would fill a memory
        Assert.Null(PictureFile.Clean(wide));
        foreach (byte[] whole in new[] { s_jpeg, s_webp })
        {
            for (int length = 0; length < whole.Length; length++)
            {
                Assert.Null(PictureFile.Clean(whole.AsSpan(0, length)));
            }
        }
    }

    [Fact]
    public void Clean_AnyByteChanged_NeverThrows()
    {
        byte[] png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, .. Chunk("IHDR"), .. Chunk("IDAT"), .. Chunk("IEND")];
        foreach (byte[] whole in new[] { s_jpeg, s_webp, png })
        {
            for (int at = 0; at < whole.Length; at++)
            {
                foreach (byte value in new byte[] { 0, 1, 0x7F, 0x80, 0xFE, 0xFF })
                {
                    byte[] changed = [.. whole];
                    changed[at] = value;
                    _ = PictureFile.Clean(changed);
                }
            }
        }
    }

    private static byte[] Segment(byte marker) => [0xFF, marker, 0, (byte)(s_secret.Length + 2), .. s_secret];

    private static byte[] Chunk(string name) => [0, 0, 0, (byte)s_secret.Length, .. Encoding.ASCII.GetBytes(name), .. s_secret, 1, 2, 3, 4];

    private static byte[] RiffChunk(string name) => [.. Encoding.ASCII.GetBytes(name), (byte)s_secret.Length, 0, 0, 0, .. s_secret, .. s_secret.Length % 2 == 1 ? new byte[1] : []];

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Sightglass.slnx")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }
}
