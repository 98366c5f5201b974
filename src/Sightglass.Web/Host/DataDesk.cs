using Sightglass.Storage;

namespace Sightglass.Web.Host;

/// <summary>The data folder of the pages. Where none is named it lies in a temporary folder, made when somebody first asks for it, and goes with the pages.</summary>
public sealed class DataDesk : IDisposable
{
    private readonly Lazy<DataFolder> _folder;
    private string? _passing;

    /// <param name="named">An open folder, which goes to the desk, or null.</param>
    public DataDesk(DataFolder? named) => _folder = named is not null ? new(named) : new(Passing);

    public DataFolder Folder => _folder.Value;

    /// <summary>The records, for one piece of work; dispose of it soon.</summary>
    public RecordsContext Records() => Folder.Records();

    public void Dispose()
    {
        if (_folder.IsValueCreated)
        {
            _folder.Value.Dispose();
        }

        if (_passing is not null)
        {
            Directory.Delete(_passing, recursive: true);
        }
    }

    private DataFolder Passing() => DataFolder.Open(_passing = Directory.CreateTempSubdirectory("sightglass-data").FullName);
}
