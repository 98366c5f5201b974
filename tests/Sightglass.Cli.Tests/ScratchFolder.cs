namespace Sightglass.Cli.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class ScratchFolder : IDisposable
{
    public ScratchFolder() => Directory.CreateDirectory(Folder);

    public string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "scratch", Guid.NewGuid().ToString("n"));

    public string At(string name) => Path.Combine(Folder, name);

    public string Write(string name, string text)
    {
        string path = At(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
