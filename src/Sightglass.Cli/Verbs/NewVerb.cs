using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Scaffold;
using Sightglass.Cli.Output;
using Sightglass.Plant.Kinds;

namespace Sightglass.Cli.Verbs;

/// <summary><c>new</c>: a class book to start from.</summary>
internal sealed class NewVerb : Verb
{
    private readonly Argument<string> _folder = new("FOLDER") { Description = "Where the book is to be; a folder that is not there yet, or is empty." };
    private readonly Option<string?> _title = new("--title") { Description = "Title of the class. Default: the folder's name.", HelpName = "TITLE" };

    public NewVerb()
        : base("new", "Make a class book to start from: one tank, one hole, one situation, and the schema by which an editor helps.")
    {
        Add(_folder);
        Add(_title);
    }

    public override IReadOnlyList<(string Call, string Says)> Examples =>
    [
        ("new my-class", "a book in the folder my-class"),
        ("new my-class --title \"Heron\"", "with a title of its own"),
    ];

    protected override Task<int> RunAsync(ParseResult line, CancellationToken stop)
    {
        string folder = line.GetValue(_folder)!;
        if (File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any()))
        {
            return WrongUse(line, $"`{folder}` is there already and holds something; name a folder that is not there yet.");
        }

        OutputFile.To(folder, () => Directory.CreateDirectory(folder));
        string title = line.GetValue(_title) ?? Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder)));
        List<string> written = [];
        foreach (SourceText file in BookScaffold.New(title, KindLibrary.Catalog))
        {
            string path = Path.Combine(folder, file.Path);
            OutputFile.To(path, () => Directory.CreateDirectory(Path.GetDirectoryName(path)!));
            OutputFile.Write(path, file.Text);
            written.Add(path.Replace('\\', '/'));
        }

        TextWriter output = line.InvocationConfiguration.Output;
        if (line.GetValue(Json))
        {
            Answer.Write(output, new NewAnswer(folder.Replace('\\', '/'), title, written));
            return Task.FromResult(ExitCode.Good);
        }

        written.ForEach(output.WriteLine);
        output.WriteLine($"Next: {ExampleHelp.Program} check {folder}");
        output.WriteLine($"      {ExampleHelp.Program} run --book {folder}");
        return Task.FromResult(ExitCode.Good);
    }
}
