using Sightglass.Basics.Diagnostics;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Kinds;

namespace Sightglass.Drawing.Tests;

/// <summary>The books of the repository, read once.</summary>
internal static class DemoBooks
{
    private static readonly Lazy<ClassBook> _curlew = new(() => Read("curlew"));
    private static readonly Lazy<ClassBook> _smallest = new(() => Read("smallest"));

    public static ClassBook Curlew => _curlew.Value;

    public static ClassBook Smallest => _smallest.Value;

    private static ClassBook Read(string name)
    {
        string root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "Sightglass.slnx")))
        {
            root = Path.GetDirectoryName(root)!;
        }

        DiagnosticList found = new();
        return BookReader.Read(Path.Combine(root, "books", name), KindLibrary.Catalog, found)
            ?? throw new InvalidOperationException(string.Join('\n', found));
    }
}
