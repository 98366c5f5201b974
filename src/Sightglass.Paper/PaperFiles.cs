namespace Sightglass.Paper;

/// <summary>Styles of the papers, embedded: for pages that show them and files that stand alone.</summary>
public static class PaperFiles
{
    /// <summary>One of them by its name, such as <c>lesson.css</c>; null where there is none.</summary>
    public static Stream? Open(string name) => typeof(PaperFiles).Assembly.GetManifestResourceStream("paper/" + name);

    /// <summary>The text of one that is there.</summary>
    public static string Text(string name)
    {
        using StreamReader file = new(Open(name) ?? throw new ArgumentException($"There is no style `{name}`.", nameof(name)));
        return file.ReadToEnd();
    }
}
