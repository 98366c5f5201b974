using System.Collections.Immutable;

namespace Sightglass.Drawing.Look;

/// <summary>The look as files: tokens, sheet, drawing classes and fonts, embedded once for pages, reports and drawings.</summary>
public static class LookFiles
{
    private const string Prefix = "look/";

    /// <summary>Names such as <c>tokens.css</c> and <c>fonts/….woff2</c>, in ordinal order.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        .. typeof(LookFiles).Assembly.GetManifestResourceNames()
            .Where(n => n.StartsWith(Prefix, StringComparison.Ordinal))
            .Select(n => n[Prefix.Length..])
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Opens a file, or null where there is none of that name.</summary>
    public static Stream? Open(string name) => typeof(LookFiles).Assembly.GetManifestResourceStream(Prefix + name);

    /// <summary>Bytes of a file.</summary>
    /// <exception cref="ArgumentException">There is no such file.</exception>
    public static byte[] Bytes(string name)
    {
        using Stream stream = Open(name) ?? throw new ArgumentException($"No file '{name}' in the look.", nameof(name));
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    /// <inheritdoc cref="Bytes"/>
    public static string Text(string name) => System.Text.Encoding.UTF8.GetString(Bytes(name));

    /// <summary>Content type by the ending of the name.</summary>
    public static string ContentType(string name) => Path.GetExtension(name) switch
    {
        ".css" => "text/css; charset=utf-8",
        ".woff2" => "font/woff2",
        _ => "text/plain; charset=utf-8",
    };
}
