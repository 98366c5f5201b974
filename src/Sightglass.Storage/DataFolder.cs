using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Sightglass.Storage.Files;

namespace Sightglass.Storage;

/// <summary>Everything that is edited with the program, in one folder: a database and files beside it. Who copies the folder has it all.</summary>
/// <remarks>One program has it open at a time. What saving the <see cref="RecordsContext"/> has acknowledged is on disk.</remarks>
public sealed class DataFolder : IDisposable
{
    private const string DatabaseName = "sightglass.db";
    private readonly FileStream _lock;

    private DataFolder(string path, FileStream held)
    {
        Path = path;
        _lock = held;
        Files = new(System.IO.Path.Combine(path, "files"));
    }

    /// <summary>Full path.</summary>
    public string Path { get; }

    /// <summary>Photographs and voices, by the hash of what is in them.</summary>
    public StoredFiles Files { get; }

    private string Database => System.IO.Path.Combine(Path, DatabaseName);

    /// <summary>Where a book's data is when nobody says: in the user's own application data, and in the temporary folder where there is none.</summary>
    /// <param name="bookFolder">The book's; its last part names the data.</param>
    public static string Usual(string bookFolder)
    {
        string home = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        string name = System.IO.Path.GetFileName(System.IO.Path.TrimEndingDirectorySeparator(System.IO.Path.GetFullPath(bookFolder)));
        return System.IO.Path.Combine(home.Length > 0 ? home : System.IO.Path.GetTempPath(), "sightglass", "data", name);
    }

    /// <summary>Opens a folder, makes it where there is none, and brings an older database up to date.</summary>
    /// <exception cref="DataFolderException">It is open elsewhere, not writable, damaged, or written by a newer program. Nothing was changed.</exception>
    public static DataFolder Open(string folder)
    {
        string path = System.IO.Path.GetFullPath(folder);
        FileStream held = Hold(path);
        DataFolder opened = new(path, held);
        try
        {
            opened.Bring();
            return opened;
        }
        catch (SqliteException damaged)
        {
            opened.Dispose();
            throw new DataFolderException(
                $"The database {opened.Database} cannot be read ({damaged.Message.TrimEnd('.')}). Nothing was changed. Put back a copy of the folder, or name another one with --data.", damaged);
        }
        catch
        {
            opened.Dispose();
            throw;
        }
    }

    /// <summary>The records, for one piece of work; dispose of it soon.</summary>
    public RecordsContext Records() => new(ConnectionText(pooled: true));

    /// <inheritdoc />
    public void Dispose()
    {
        if (File.Exists(Database))
        {
            using SqliteConnection connection = new(ConnectionText(pooled: true));
            SqliteConnection.ClearPool(connection);
        }

        _lock.Dispose();
    }

    private static FileStream Hold(string path)
    {
        string note = System.IO.Path.Combine(path, "opened by.txt");
        try
        {
            Directory.CreateDirectory(path);
            FileStream held = new(System.IO.Path.Combine(path, "lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            File.WriteAllText(note, $"process {Environment.ProcessId} on {Environment.MachineName}");
            return held;
        }
        catch (UnauthorizedAccessException refused)
        {
            throw new DataFolderException($"The data folder {path} cannot be written ({refused.Message.TrimEnd('.')}). Name another one with --data.", refused);
        }
        catch (IOException taken)
        {
            string who = File.Exists(note) ? $" by {File.ReadAllText(note).Trim()}" : "";
            throw new DataFolderException(
                File.Exists(path)
                    ? $"{path} is a file, and the data needs a folder. Name one with --data."
                    : Directory.Exists(path)
                        ? $"The data folder {path} is already open{who}. One program has it at a time: end that one, or name another folder with --data."
                        : $"The data folder {path} cannot be made ({taken.Message.TrimEnd('.')}). Name another one with --data.",
                taken);
        }
    }

    private void Bring()
    {
        using RecordsContext records = new(ConnectionText(pooled: false));
        string[] known = [.. records.Database.GetMigrations()];
        if (!File.Exists(Database))
        {
            records.Database.Migrate();
            return;
        }

        string[] done = [.. records.Database.GetAppliedMigrations()];
        if (done.FirstOrDefault(m => !known.Contains(m, StringComparer.Ordinal)) is { } newer)
        {
            throw new DataFolderException($"The data folder {Path} was written by a newer Sightglass (it knows '{newer}'). Nothing was changed. Use that one, or name another folder with --data.");
        }

        if (done.Length < known.Length)
        {
            records.Database.Migrate();
        }
    }

    private string ConnectionText(bool pooled) => new SqliteConnectionStringBuilder { DataSource = Database, Pooling = pooled, ForeignKeys = true }.ToString();
}
