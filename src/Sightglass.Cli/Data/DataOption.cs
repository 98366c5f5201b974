using System.CommandLine;
using Sightglass.Storage;

namespace Sightglass.Cli.Data;

/// <summary>The data folder on the command line: for every verb that keeps something.</summary>
internal static class DataOption
{
    public static Option<string?> Create() => new("--data") { Description = "Folder in which what is edited is kept. Default: the book's in your own data folder.", HelpName = "FOLDER" };

    /// <summary>Opens it, does the work, and closes it again; says why where it cannot be opened.</summary>
    public static int With(ParseResult line, Option<string?> option, string bookFolder, Func<DataFolder, int> work)
    {
        try
        {
            using DataFolder data = DataFolder.Open(line.GetValue(option) ?? DataFolder.Usual(bookFolder));
            return work(data);
        }
        catch (DataFolderException refused)
        {
            line.InvocationConfiguration.Error.WriteLine(refused.Message);
            return ExitCode.WrongUse;
        }
    }
}
