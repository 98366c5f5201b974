using System.Collections.Immutable;
using System.Text;
using System.Text.Json;

namespace Sightglass.World.Records;

/// <summary>A record as read: a header and what follows. JSON, one object a line.</summary>
public sealed record SessionRecord(RecordHeader Header, ImmutableArray<RecordLine> Lines)
{
    internal static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>The hash with which the session was closed, hexadecimal; null where it was not.</summary>
    public string? Hash => Lines.IsEmpty ? null : Lines[^1].Hash;

    /// <summary>The last moment that the record knows of, ticks.</summary>
    public long End => Lines.IsEmpty ? 0 : Lines.Max(l => l.At);

    /// <summary>What it says up to a moment, which is its last one then: to go on from there.</summary>
    public SessionRecord Until(long at) => this with { Lines = [.. Lines.Where(l => l.At <= at && l.Do is not null), new(at)] };

    /// <summary>
    /// Reads a record. A last line that was cut off while it was written was never acknowledged: it is left out. Whatever follows a
    /// damaged line is left out too.
    /// </summary>
    /// <returns>Null where there is no header of a known format.</returns>
    public static SessionRecord? Read(ReadOnlySpan<byte> bytes, out int whole)
    {
        whole = 0;
        RecordHeader? header = null;
        ImmutableArray<RecordLine>.Builder lines = ImmutableArray.CreateBuilder<RecordLine>();
        while (whole < bytes.Length && bytes[whole..].IndexOf((byte)'\n') is int length and >= 0)
        {
            ReadOnlySpan<byte> line = bytes.Slice(whole, length);
            if (header is null)
            {
                header = Parse<RecordHeader>(line);
                if (header is not { Format: RecordHeader.CurrentFormat, Start: not null })
                {
                    return null;
                }
            }
            else if (Parse<RecordLine>(line) is { } read && read.At >= (lines.Count == 0 ? 0 : lines[^1].At))
            {
                lines.Add(read);
            }
            else
            {
                break;
            }

            whole += length + 1;
        }

        return header is null ? null : new(header, lines.ToImmutable());
    }

    internal static byte[] Line<T>(T value) => Encoding.UTF8.GetBytes(JsonSerializer.Serialize(value, Json) + "\n");

    private static T? Parse<T>(ReadOnlySpan<byte> line)
        where T : class
    {
        try
        {
            return JsonSerializer.Deserialize<T>(line, Json);
        }
        catch (JsonException)
        {
            return null;
        }
        catch (NotSupportedException)
        {
            return null;
        }
    }
}
