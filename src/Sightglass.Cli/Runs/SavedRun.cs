using System.Text.Json;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Cli.Books;
using Sightglass.Cli.Output;
using Sightglass.World.Snapshots;

namespace Sightglass.Cli.Runs;

/// <summary>A run broken off: what is run, and where it stands. A file of its own, so that another process can take it up.</summary>
/// <param name="Format">Raised when older files can no longer be read.</param>
/// <param name="Book">Title of the class book.</param>
/// <param name="BookHash">Of the book's files: taken up with others, a run may come out differently.</param>
/// <param name="RoadNumber">Null for the class.</param>
/// <param name="Situation">Where it started.</param>
/// <param name="Seed">Of the draws.</param>
/// <param name="Case">Of the draws.</param>
/// <param name="Card">As it was named, or null.</param>
/// <param name="For">Ticks after which it ends, or null: with the card.</param>
/// <param name="World">Where it stands.</param>
internal sealed record SavedRun(int Format, string Book, string BookHash, string? RoadNumber, string Situation, ulong Seed, ulong Case, string? Card, long? For, string World)
{
    private const int CurrentFormat = 1;

    public static SavedRun Of(RunRequest request, string folder, string? card, World.World world) => new(
        CurrentFormat,
        request.Plan.Book.Title,
        Sightglass.Book.BookHash.Of(folder),
        request.Plan.Book.RoadNumberInUse,
        request.StartName,
        request.Seed,
        request.Case,
        card,
        request.For?.Ticks,
        world.Save().ToJson());

    /// <summary>Writes it whole or not at all: whoever is killed in between leaves the one before.</summary>
    public void Write(string path)
    {
        string next = path + ".next";
        OutputFile.To(path, () =>
        {
            File.WriteAllText(next, JsonSerializer.Serialize(this));
            File.Move(next, path, overwrite: true);
        });
    }

    /// <summary>The run kept in a file, or null after saying what is wrong.</summary>
    /// <param name="path">Its file.</param>
    /// <param name="inspection">The book it has to fit.</param>
    /// <param name="error">Takes what is to be said.</param>
    public static SavedRun? Read(string path, BookInspection inspection, TextWriter error)
    {
        if (!File.Exists(path))
        {
            error.WriteLine($"There is no file `{path}`. `run … --save {path}` writes one.");
            return null;
        }

        if (Parse(File.ReadAllText(path)) is not { Format: CurrentFormat } saved)
        {
            error.WriteLine($"`{path}` is not a run kept by `run --save` of this version.");
            return null;
        }

        if (inspection.Fleet.For(saved.RoadNumber, null) is null || !inspection.Book!.Situations.ContainsKey(saved.Situation))
        {
            error.WriteLine($"The run is of `{saved.Book}`, {saved.RoadNumber} in `{saved.Situation}`, which this book does not have; name its book by --book.");
            return null;
        }

        if (saved.BookHash != Sightglass.Book.BookHash.Of(inspection.Folder))
        {
            error.WriteLine($"The run was kept with another edition of `{saved.Book}`: begin it anew.");
            return null;
        }

        return saved;
    }

    public WorldSnapshot Snapshot() => WorldSnapshot.FromJson(World);

    public SimTime? Length => For is { } ticks ? new SimTime(ticks) : null;

    private static SavedRun? Parse(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<SavedRun>(text);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
