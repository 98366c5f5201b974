namespace Sightglass.Browser.Tests;

/// <summary>The same pages of a copy of the demo book, for tests that write into it.</summary>
public sealed class CopiedSite : Site
{
    private readonly string _folder = Directory.CreateTempSubdirectory("sightglass-book-").FullName;

    protected override string BookFolder
    {
        get
        {
            string source = Folder("curlew");
            foreach (string file in Directory.GetFiles(source, "*", SearchOption.AllDirectories))
            {
                string copy = Path.Combine(_folder, Path.GetRelativePath(source, file));
                Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
                File.Copy(file, copy, overwrite: true);
            }

            return _folder;
        }
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
