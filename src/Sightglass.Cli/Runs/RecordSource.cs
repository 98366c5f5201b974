using Sightglass.Book;
using Sightglass.Cli.Books;
using Sightglass.World.Records;

namespace Sightglass.Cli.Runs;

/// <summary>Finds the record of a session that is to be done again.</summary>
internal static class RecordSource
{
    /// <summary>The record, or null after saying why there is none. Says also where the book has been changed since.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="inspection">The book it has to fit.</param>
    /// <param name="error">Takes what is to be said.</param>
    public static SessionRecord? Read(string path, BookInspection inspection, TextWriter error)
    {
        if (!File.Exists(path))
        {
            error.WriteLine($"There is no file `{path}`. The pages keep their records in the folder of `serve --records FOLDER`.");
            return null;
        }

        if (SessionRecord.Read(File.ReadAllBytes(path), out _) is not { } record)
        {
            error.WriteLine($"`{path}` is not the record of a session of this version: its first line should hold `format` {RecordHeader.CurrentFormat}, `book` and `start`.");
            return null;
        }

        RecordHeader header = record.Header;
        if (inspection.Fleet.For(header.Start.RoadNumber, null) is null
            || (header.Start.Situation is { } situation && !inspection.Book!.Situations.ContainsKey(situation)))
        {
            error.WriteLine($"The record is of `{header.Book}`, {header.Start.RoadNumber} in `{header.Start.Situation}`, which this book does not have; name its book by --book.");
            return null;
        }

        if (header.BookHash != BookHash.Of(inspection.Folder))
        {
            error.WriteLine($"The record was made with another edition of `{header.Book}`: what is done again may come out differently.");
        }

        return record;
    }
}
