using System.Globalization;
using System.Text;

namespace Sightglass.Web.Live;

/// <summary>Tells whether a file of a book may have changed, without reading any: names, lengths and times of all its texts, cards and recordings, those of its languages among them.</summary>
internal static class BookStamp
{
    /// <returns>Empty where there is no such folder.</returns>
    public static string Of(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return "";
        }

        StringBuilder stamp = new();
        foreach (FileInfo file in new DirectoryInfo(folder).EnumerateFiles("*", SearchOption.AllDirectories).Where(f => f.Extension is ".yaml" or ".card" || f.Extension.Equals(".csv", StringComparison.OrdinalIgnoreCase)).OrderBy(f => f.FullName, StringComparer.Ordinal))
        {
            stamp.Append(CultureInfo.InvariantCulture, $"{file.FullName}|{(file.Exists ? file.Length : -1)}|{file.LastWriteTimeUtc.Ticks}\n");
        }

        return stamp.ToString();
    }
}
