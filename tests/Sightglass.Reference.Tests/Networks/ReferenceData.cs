namespace Sightglass.Reference.Tests.Networks;

/// <summary>The problems that lie beside the tests.</summary>
public static class ReferenceData
{
    /// <summary>Every problem of an area that has a solution: <c>train-00</c>, …</summary>
    public static IEnumerable<string> Cases(string area) =>
        Directory.EnumerateFiles(Folder(area), "*.csv").Select(p => Path.GetFileNameWithoutExtension(p)).Order(StringComparer.Ordinal);

    public static NetFile Net(string area, string name) => NetFile.Parse(Read(area, name + ".net"));

    public static CylinderFile Cylinders(string name) => CylinderFile.Parse(Read("cylinders", name + ".json"));

    public static SampleTable Solution(string area, string name) => SampleTable.Parse(Read(area, name + ".csv"));

    private static string Read(string area, string file) => File.ReadAllText(Path.Combine(Folder(area), file));

    private static string Folder(string area) => Path.Combine(AppContext.BaseDirectory, "Data", area);
}
