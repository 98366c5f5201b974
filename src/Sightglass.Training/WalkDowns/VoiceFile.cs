namespace Sightglass.Training.WalkDowns;

/// <summary>Something said, as a phone records it.</summary>
public sealed record VoiceFile(byte[] Bytes, string Ending)
{
    /// <summary>Bytes of two minutes, generously.</summary>
    public const int Largest = 8 << 20;

    /// <summary>So many bytes of its beginning tell what a file is.</summary>
    public const int Told = 16;

    /// <summary>Its type, as a page is told it.</summary>
    public string Type => Ending switch { ".webm" => "audio/webm", ".ogg" => "audio/ogg", _ => "audio/mp4" };

    /// <summary>The file by how it begins (WebM, Ogg, MP4); null for anything else.</summary>
    public static VoiceFile? Of(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ReadOnlySpan<byte> b = bytes;
        string? ending = b.StartsWith((ReadOnlySpan<byte>)[0x1A, 0x45, 0xDF, 0xA3]) ? ".webm"
            : b.StartsWith("OggS"u8) ? ".ogg"
            : b.Length > 12 && b[4..].StartsWith("ftyp"u8) ? ".m4a"
            : null;
        return ending is not null && bytes.Length <= Largest ? new(bytes, ending) : null;
    }
}
