namespace Sightglass.Book.Yaml;

/// <summary>
/// How large a book may be. Ample for any real class (a few hundred kilobytes), small enough that hostile input is
/// refused in bounded time and memory.
/// </summary>
public sealed record YamlLimits
{
    public static readonly YamlLimits Default = new();

    /// <summary>Bytes of one file.</summary>
    public int FileBytes { get; init; } = 8 << 20;

    /// <summary>Bytes of all files of a book.</summary>
    public int TotalBytes { get; init; } = 16 << 20;

    /// <summary>Files and folders looked at.</summary>
    public int FolderEntries { get; init; } = 20_000;

    /// <summary>Nested lists and maps.</summary>
    public int Depth { get; init; } = 64;

    /// <summary>Values, keys, lists and maps of all files together.</summary>
    public int Nodes { get; init; } = 120_000;

    /// <summary>Items of all road numbers together: each road number with modifications is read and checked as a whole.</summary>
    public int ItemsOfRoadNumbers { get; init; } = 200_000;

    /// <summary>Vehicles of one train.</summary>
    public int Vehicles { get; init; } = 250;

    /// <summary>Names looked at for 'did you mean'; findings after that come without it.</summary>
    public int NamesCompared { get; init; } = 100_000;

    /// <summary>Findings reported; what comes after is cut off with one last line.</summary>
    public int Findings { get; init; } = 1_000;

    /// <summary>Broken pieces of one file that are set aside to find the next.</summary>
    public int Mendings { get; init; } = 40;
}
