using System.Runtime.CompilerServices;
using Sightglass.Basics.Diagnostics;
using Sightglass.Web.Live;
using Sightglass.World.Records;

namespace Sightglass.Web.Tests;

/// <summary>The demo book, read once.</summary>
internal static class Shelves
{
    private static readonly Lazy<BookShelf> s_curlew = new(() => Open("curlew"));

    public static BookShelf Curlew => s_curlew.Value;

    public static SessionStart Leak { get; } = new("4101", "leaking compartment", 1, 3);

    public static string Folder(string name) => Path.Combine(Root(), "books", name);

    public static BookShelf Open(string name)
    {
        DiagnosticList found = new();
        return BookShelf.Open(Folder(name), found) ?? throw new InvalidOperationException(string.Join('\n', found));
    }

    private static string Root([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
}
