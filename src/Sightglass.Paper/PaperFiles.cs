namespace Sightglass.Paper;

/// <summary>Styles, scripts and fonts of the papers, embedded: for pages that show them and files that stand alone.</summary>
public static class PaperFiles
{
    /// <summary>The style of papers, beside the look's own sheet.</summary>
    public static string Css { get; } = Text("paper.css");

    /// <summary>One of them by its name, such as <c>paper.css</c>; null where there is none.</summary>
    public static Stream? Open(string name) => typeof(PaperFiles).Assembly.GetManifestResourceStream("paper/" + name);

    /// <summary>The text of one that is there.</summary>
    public static string Text(string name)
    {
        using StreamReader file = new(Open(name) ?? throw new ArgumentException($"There is no file `{name}` among the papers.", nameof(name)));
        return file.ReadToEnd();
    }
}
