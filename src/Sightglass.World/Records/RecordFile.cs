namespace Sightglass.World.Records;

/// <summary>A record on disk that grows. What <see cref="Append"/> has returned from is on disk.</summary>
public sealed class RecordFile : IDisposable
{
    private readonly FileStream _file;

    private RecordFile(FileStream file) => _file = file;

    /// <summary>Begins a record; an older one in the same place is replaced.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="header">Its first line.</param>
    /// <param name="repeated">Lines that it begins with: those of the record that it goes on from.</param>
    public static RecordFile Create(string path, RecordHeader header, IEnumerable<RecordLine>? repeated = null)
    {
        FileStream file = new(path, FileMode.Create, FileAccess.Write, FileShare.Read);
        file.Write(SessionRecord.Line(header));
        foreach (RecordLine line in repeated ?? [])
        {
            file.Write(SessionRecord.Line(line));
        }

        file.Flush(flushToDisk: true);
        return new(file);
    }

    /// <summary>Goes on with a record: what was cut off at its end is taken away first.</summary>
    /// <returns>Null where it cannot be read.</returns>
    public static RecordFile? Open(string path, out SessionRecord? record)
    {
        record = null;
        if (!File.Exists(path) || (record = SessionRecord.Read(File.ReadAllBytes(path), out int whole)) is null)
        {
            return null;
        }

        FileStream file = new(path, FileMode.Open, FileAccess.Write, FileShare.Read);
        file.SetLength(whole);
        file.Seek(0, SeekOrigin.End);
        return new(file);
    }

    /// <summary>Writes a line and waits until it is on disk.</summary>
    /// <exception cref="IOException">It could not be written: what it says has not happened.</exception>
    public void Append(RecordLine line)
    {
        _file.Write(SessionRecord.Line(line));
        _file.Flush(flushToDisk: true);
    }

    /// <summary>Writes a line without waiting: a moment that was reached may be lost without harm.</summary>
    public void Note(RecordLine line)
    {
        _file.Write(SessionRecord.Line(line));
        _file.Flush();
    }

    public void Dispose() => _file.Dispose();
}
