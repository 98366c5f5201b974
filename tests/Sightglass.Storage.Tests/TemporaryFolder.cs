namespace Sightglass.Storage.Tests;

/// <summary>A folder that goes when the test is over.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("sightglass-data").FullName;

    public string Sub(string name) => System.IO.Path.Combine(Path, name);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
