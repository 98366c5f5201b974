using System.Collections.Immutable;
using System.Text.Json;
using Sightglass.Book.Model;
using Sightglass.Training.Pictures;

namespace Sightglass.Training.WalkDowns;

/// <summary>Reads the result of a walk-down. It comes from a phone or from anybody: nothing of it is believed, and what it costs to refuse it is bounded.</summary>
public static class WalkDownReader
{
    private const int MostTokens = 400_000, MostEntries = 5_000, MostMarks = 50, MostComplaints = 40, LargestPhoto = 12 << 20;
    private const int Deepest = 8;

    /// <param name="text">The file's bytes.</param>
    /// <param name="book">The book that it has to be of.</param>
    /// <param name="found">What is wrong, each with its place; all of it, up to a bound.</param>
    /// <returns>Null where something is wrong: then nothing is taken.</returns>
    public static WalkDownResult? Read(ReadOnlyMemory<byte> text, ClassBook book, List<string> found)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(found);
        try
        {
            if (text.Length > WalkDownResult.MostBytes || !IsModest(text.Span))
            {
                found.Add("the file is larger than a walk-down can be; hand in from the phone again, and take fewer photographs at a time");
                return null;
            }

            using JsonDocument document = JsonDocument.Parse(text, new() { MaxDepth = Deepest, AllowDuplicateProperties = false });
            WalkDownResult? result = Whole(document.RootElement, book, found);
            if (found.Count > MostComplaints)
            {
                found.RemoveRange(MostComplaints, found.Count - MostComplaints);
                found.Add("there is more; mend these first");
            }

            return found.Count == 0 ? result : null;
        }
        catch (JsonException e)
        {
            found.Add($"line {(e.LineNumber ?? 0) + 1}, byte {(e.BytePositionInLine ?? 0) + 1}: this is no file of a walk-down ({e.Message.Split(" LineNumber")[0].Split(" Path:")[0].TrimEnd('.')}); save it on the phone again");
            return null;
        }
    }

    /// <summary>Counts before a tree is built: a few bytes a value could ask for a machine's memory.</summary>
    private static bool IsModest(ReadOnlySpan<byte> text)
    {
        Utf8JsonReader reader = new(text, new JsonReaderOptions { MaxDepth = Deepest });
        int tokens = 0;
        while (reader.Read())
        {
            if (++tokens > MostTokens)
            {
                return false;
            }
        }

        return true;
    }

    private static WalkDownResult? Whole(JsonElement root, ClassBook book, List<string> found)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            found.Add($"the file is {JsonReading.Described(root)}; a walk-down is an object");
            return null;
        }

        JsonReading head = new(root, "", found);
        string format = head.Text("format", 80);
        if (format != WalkDownResult.Format)
        {
            found.Add($"format: is {JsonReading.Short(format)}; this program reads `{WalkDownResult.Format}`");
            return null;
        }

        string title = head.Text("book", 200, required: true);
        if (title != book.Title)
        {
            found.Add($"book: the walk-down is of {JsonReading.Short(title)}, and this book is `{book.Title}`; name that book with --book");
            return null;
        }

        head.Text("edition", 80);
        string number = head.Text("road_number", 80, nullable: true);
        if (number.Length > 0 && !book.RoadNumbers.ContainsKey(number))
        {
            found.Add($"road_number: the book has no {JsonReading.Short(number)}; it has {string.Join(", ", book.RoadNumbers.Keys)}");
        }

        string purpose = head.Text("purpose", 200);
        Guid phone = head.Id("phone");
        string by = head.Text("by", 80, required: true);
        head.Instant("made_at");
        JsonElement? entries = head.Take("entries", JsonValueKind.Array, "write a list of entries");
        head.Finish();
        if (entries is not { } list || list.GetArrayLength() > MostEntries)
        {
            found.Add($"entries: write at most {MostEntries} of them");
            return null;
        }

        ImmutableArray<WalkDownFinding>.Builder read = ImmutableArray.CreateBuilder<WalkDownFinding>();
        HashSet<Guid> ids = [];
        int at = 0;
        foreach (JsonElement one in list.EnumerateArray())
        {
            if (found.Count > MostComplaints)
            {
                break;
            }

            string path = $"entries[{at++}]";
            if (one.ValueKind != JsonValueKind.Object)
            {
                found.Add($"{path}: is {JsonReading.Described(one)}; an entry is an object");
            }
            else if (Entry(new(one, path, found), found) is var entry && !ids.Add(entry.Id))
            {
                found.Add($"{path}.id: stands here a second time; each entry has its own");
            }
            else
            {
                read.Add(entry);
            }
        }

        return new(title, number.Length > 0 ? number : null, purpose, phone, by, read.ToImmutable(), found.Count == 0 ? [.. Unknown(read, book, number)] : []);
    }

    private static WalkDownFinding Entry(JsonReading e, List<string> found)
    {
        Guid id = e.Id("id");
        int revision = (int)e.Number("revision", 1, int.MaxValue);
        string place = e.Text("place", 200, required: true);
        string item = e.Text("item", 200, nullable: true);
        FoundState state = State(e, found);
        string label = e.Text("label", 200), opens = e.Text("opens_towards", 200), note = e.Text("note", 2000);
        string? marks = Marks(e, found);
        PictureFile? photo = null;
        if (e.File("photo", LargestPhoto) is { } picture && (photo = PictureFile.Clean(picture)) is null)
        {
            found.Add($"{e.At("photo")}: is no picture; a JPEG, PNG or WebP file of at most {PictureFile.Largest} pixels a side is wanted");
        }

        VoiceFile? voice = null;
        if (e.File("voice", VoiceFile.Largest) is { } sound && (voice = VoiceFile.Of(sound)) is null)
        {
            found.Add($"{e.At("voice")}: is no recording; a WebM, Ogg or MP4 file is wanted");
        }

        string by = e.Text("by", 80, required: true);
        DateTimeOffset instant = e.Instant("at");
        e.Finish();
        return new(id, revision, place, item.Length > 0 ? item : null, state, label, opens, note, marks, photo, voice, by, instant);
    }

    private static FoundState State(JsonReading e, List<string> found)
    {
        string word = e.Text("state", 40);
        switch (word)
        {
            case "seen":
                return FoundState.Seen;
            case "not_seen":
                return FoundState.NotSeen;
            case "differs":
                return FoundState.Differs;
            default:
                found.Add($"{e.At("state")}: is {JsonReading.Short(word)}; write `seen`, `not_seen` or `differs`");
                return FoundState.Seen;
        }
    }

    private static string? Marks(JsonReading e, List<string> found)
    {
        if (e.Take("marks", JsonValueKind.Array, "write a list of marks") is not { } list || list.GetArrayLength() == 0)
        {
            return null;
        }

        if (list.GetArrayLength() > MostMarks)
        {
            found.Add($"{e.At("marks")}: has {list.GetArrayLength()}; at most {MostMarks} can be told apart");
            return null;
        }

        List<object> marks = [];
        int at = 0;
        foreach (JsonElement one in list.EnumerateArray())
        {
            string path = $"{e.At("marks")}[{at++}]";
            if (one.ValueKind != JsonValueKind.Object)
            {
                found.Add($"{path}: is {JsonReading.Described(one)}; a mark is an object");
                continue;
            }

            JsonReading mark = new(one, path, found);
            marks.Add(new { x = mark.Number("x", 0, 1), y = mark.Number("y", 0, 1), width = mark.Number("width", 0, 1), height = mark.Number("height", 0, 1), name = mark.Text("name", 120) });
            mark.Finish();
        }

        return JsonSerializer.Serialize(marks);
    }

    /// <summary>Names that the book does not have: it may have been edited since. They are kept, and nothing is proposed for them.</summary>
    private static IEnumerable<string> Unknown(IEnumerable<WalkDownFinding> entries, ClassBook book, string number)
    {
        ClassBook machine = number.Length > 0 ? book.For(number) : book;
        return entries.SelectMany(e => new[]
        {
            machine.Places.ContainsKey(e.Place) ? null : $"the book has no place `{e.Place}`; kept, and nothing is proposed for it",
            e.Item is null || machine.Items.ContainsKey(e.Item) || book.Items.ContainsKey(e.Item) ? null : $"the book has no item `{e.Item}`; kept, and nothing is proposed for it",
        }).OfType<string>().Distinct(StringComparer.Ordinal);
    }
}
