using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Sightglass.Web.Room;

/// <summary>The room's log on disk, one JSON object a line. What <see cref="Append"/> has returned from is on disk; a last line that was cut off was never acknowledged and is taken away.</summary>
public sealed class RoomLog : IDisposable
{
    private static readonly JsonSerializerOptions s_json = new(JsonSerializerDefaults.Web) { Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) } };

    private readonly FileStream _file;

    private RoomLog(FileStream file) => _file = file;

    /// <summary>Opens a log, or begins one.</summary>
    /// <param name="path">Of the file; its folder is there.</param>
    /// <param name="events">What it holds, up to the first line that cannot be read.</param>
    public static RoomLog Open(string path, out ImmutableArray<RoomEvent> events)
    {
        ImmutableArray<RoomEvent>.Builder read = ImmutableArray.CreateBuilder<RoomEvent>();
        int whole = 0;
        if (File.Exists(path))
        {
            ReadOnlySpan<byte> bytes = File.ReadAllBytes(path);
            while (whole < bytes.Length && bytes[whole..].IndexOf((byte)'\n') is int length and >= 0 && Parse(bytes.Slice(whole, length)) is { } line)
            {
                read.Add(line);
                whole += length + 1;
            }
        }

        events = read.ToImmutable();
        FileStream file = new(path, FileMode.OpenOrCreate, FileAccess.Write, FileShare.Read);
        file.SetLength(whole);
        file.Seek(0, SeekOrigin.End);
        return new(file);
    }

    /// <summary>Writes a line and waits until it is on disk.</summary>
    /// <exception cref="IOException">It could not be written: what it says has not happened.</exception>
    public void Append(RoomEvent line)
    {
        _file.Write([.. JsonSerializer.SerializeToUtf8Bytes(line, s_json), (byte)'\n']);
        _file.Flush(flushToDisk: true);
    }

    public void Dispose() => _file.Dispose();

    private static RoomEvent? Parse(ReadOnlySpan<byte> line)
    {
        try
        {
            return JsonSerializer.Deserialize<RoomEvent>(line, s_json);
        }
        catch (Exception e) when (e is JsonException or NotSupportedException)
        {
            return null;
        }
    }
}
