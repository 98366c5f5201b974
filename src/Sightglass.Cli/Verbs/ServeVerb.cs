using System.CommandLine;
using Sightglass.Cli.Books;

namespace Sightglass.Cli.Verbs;

/// <summary><c>serve</c>: the pages of a book.</summary>
internal sealed class ServeVerb : PagesVerb
{
    public ServeVerb()
        : base("serve", "Serve the pages of a book on this computer: the walk round the machine, and the machine alive.")
    {
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("serve", "the demo"),
        ("serve my-class --port 9000 --records records", "your own class, on a port of your choice, with records beside it"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string? named = line.GetValue(Folder);
        return BookFolderFinder.Find(named) is { } folder ? Task.Run(() => ServeAsync(line, folder, stop), CancellationToken.None) : NoBook(line, named);
    }
}
