using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Checks;
using Sightglass.Book.Kinds;
using Sightglass.Book.Model;
using Sightglass.Book.Readers;
using Sightglass.Book.Yaml;

namespace Sightglass.Book.Changes;

/// <summary>Changes of the book in a folder: planned on what stands there now, written whole or not at all.</summary>
/// <param name="folder">The book's.</param>
/// <param name="kinds">The kinds it may use.</param>
/// <param name="checks">Further checks that it has to pass; made anew for each reading, because a check may gather what it reads.</param>
public sealed class BookChanges(string folder, KindCatalog kinds, Func<IEnumerable<BookCheck>>? checks = null)
{
    private static readonly byte[] s_mark = [0xEF, 0xBB, 0xBF];

    /// <summary>The book as it stands on the disk.</summary>
    /// <exception cref="BookUnreadableException">A file cannot be read as text.</exception>
    public BookText Read()
    {
        DiagnosticList found = [];
        Findings findings = new(found, YamlLimits.Default);
        BookFolder files = new(folder, YamlLimits.Default, findings);
        files.Read();
        return found.FirstOrDefault(d => d.Severity == Severity.Error) is { } error
            ? throw new BookUnreadableException(error.ToString())
            : new(files.Yaml, files.Cards, kinds, [.. checks?.Invoke() ?? []]);
    }

    /// <summary>The file with a change, or why there is none; nothing is written.</summary>
    public ChangePlan Plan(BookChange change)
    {
        try
        {
            return Read().Plan(change);
        }
        catch (BookUnreadableException e)
        {
            return ChangePlan.No(e.Message);
        }
    }

    /// <summary>Makes a change of an entry.</summary>
    /// <returns>The file as it was and is, or why nothing was written.</returns>
    public ChangePlan ApplyEntry(EntryChange change)
    {
        try
        {
            return Write(Read().PlanEntry(change));
        }
        catch (BookUnreadableException e)
        {
            return ChangePlan.No(e.Message);
        }
    }

    /// <summary>Makes a change.</summary>
    /// <returns>The file as it was and is, or why nothing was written.</returns>
    public ChangePlan Apply(BookChange change) => Write(Plan(change));

    /// <summary>Puts a picture into the folder and adds it to the book's pictures.</summary>
    /// <param name="picture">With the path that its file gets here.</param>
    /// <param name="bytes">The file.</param>
    public ChangePlan ApplyPicture(Picture picture, byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(picture);
        ArgumentNullException.ThrowIfNull(bytes);
        ChangePlan plan;
        try
        {
            plan = Read().Added(NewPicture.Of(picture));
        }
        catch (BookUnreadableException e)
        {
            return ChangePlan.No(e.Message);
        }

        if (plan.File is not null)
        {
            Put(picture.File, bytes);
        }

        return Write(plan);
    }

    /// <summary>Puts a file of new entries into the folder.</summary>
    /// <returns>The file, or why nothing was written.</returns>
    public ChangePlan AddFile(NewFile file) => AddFiles([file])[^1];

    /// <summary>Puts files of new entries into the folder that hang together, with what they name; never over a file.</summary>
    /// <param name="files">At least one, each of another path.</param>
    /// <param name="beside">Files that they name, such as a recorder's: where each is put below the folder, and its bytes.</param>
    /// <returns>The files, or a single plan that says why nothing was written.</returns>
    public ImmutableArray<ChangePlan> AddFiles(IReadOnlyList<NewFile> files, params IReadOnlyList<(string Path, byte[] Bytes)> beside)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(beside);
        ImmutableArray<ChangePlan> plans;
        try
        {
            plans = Read().With(files);
        }
        catch (BookUnreadableException e)
        {
            return [ChangePlan.No(e.Message)];
        }

        if (plans[^1].File is null)
        {
            return plans;
        }

        if (beside.Select(b => b.Path).Concat(files.Select(f => f.Path)).FirstOrDefault(IsThere) is { } there)
        {
            return [ChangePlan.No(ChangeMessages.HasFile(there))];
        }

        foreach ((string path, byte[] bytes) in beside)
        {
            Put(path, bytes);
        }

        return [.. plans.Select(Write)];
    }

    private bool IsThere(string path) => Path.Exists(Path.Combine(folder, path));

    private ChangePlan Write(ChangePlan plan)
    {
        if (plan.File is not { } file)
        {
            return plan;
        }

        string path = Path.Combine(folder, file.Path);
        byte[] now = File.Exists(path) ? File.ReadAllBytes(path) : [];
        bool marked = now.AsSpan().StartsWith(s_mark);
        if (Encoding.UTF8.GetString(now.AsSpan(marked ? s_mark.Length : 0)) != file.Before)
        {
            return ChangePlan.No(ChangeMessages.FileChanged(file.Path));
        }

        byte[] text = Encoding.UTF8.GetBytes(file.After);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        WholeFile.Write(path, marked ? [.. s_mark, .. text] : text);
        return plan;
    }

    private void Put(string name, byte[] picture)
    {
        string path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        WholeFile.Write(path, picture);
    }

    /// <summary>Puts a picture into the folder and makes it the photo of an item. The same picture is there only once.</summary>
    /// <param name="change">Of the property <c>photo</c>; what it becomes is the path that the picture gets here.</param>
    /// <param name="picture">Its bytes.</param>
    /// <param name="ending">Of its name, with the point: <c>.jpg</c>.</param>
    public ChangePlan ApplyPhoto(BookChange change, byte[] picture, string ending)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(picture);
        string name = PhotoName(change.Target, picture, ending);
        BookChange named = change with { Becomes = name };
        if (Plan(named) is { File: null } refused)
        {
            return refused;
        }

        Put(name, picture);
        return Apply(named);
    }

    /// <summary><c>photos/aft-supply-valve-0a1b2c3d.jpg</c>: words of the item, and a part of the hash.</summary>
    public static string PhotoName(string target, byte[] picture, string ending)
    {
        ArgumentNullException.ThrowIfNull(target);
        string hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(picture))[..8];
        return $"photos/{FileWords.Of(target)}-{hash}{ending}";
    }
}
