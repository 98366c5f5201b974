using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace Sightglass.Paper.Pdf;

/// <summary>
/// The library puts the moment and chance into a file: its ids, the dates of its metadata, the six letters before a font's name. They are written
/// over in place, as long as before, so that the same paper of the same day is the same file.
/// </summary>
internal static partial class PdfSettled
{
    public static byte[] Settle(byte[] file, DateTime day)
    {
        string text = Encoding.Latin1.GetString(file);
        Dictionary<string, string> tags = new(StringComparer.Ordinal);
        text = FontTag().Replace(text, m => Tag(tags, m.Groups["tag"].Value) + "+Sightglass");
        string moment = day.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture) + "+00:00";
        text = MetadataDate().Replace(text, m => $"<xmp:{m.Groups["what"].Value}>{moment}<");
        text = InfoDate().Replace(text, m => $"/{m.Groups["what"].Value}(D:{day.ToString("yyyyMMddHHmmss", CultureInfo.InvariantCulture)}+00'00')");
        text = Uuid().Replace(text, "uuid:00000000-0000-4000-8000-000000000000");
        text = FileId().Replace(text, m => "/ID[<" + new string('0', 32) + "><" + new string('0', 32) + ">]");
        string hash = Convert.ToHexString(SHA256.HashData(Encoding.Latin1.GetBytes(text)))[..32];
        text = text.Replace("/ID[<" + new string('0', 32) + "><" + new string('0', 32) + ">]", $"/ID[<{hash}><{hash}>]", StringComparison.Ordinal);
        return text.Length == file.Length ? Encoding.Latin1.GetBytes(text) : throw new InvalidOperationException("The file changed its length: its table of objects would lie.");
    }

    /// <summary>Six letters for a subset, in the order in which they are met.</summary>
    private static string Tag(Dictionary<string, string> tags, string met)
    {
        if (!tags.TryGetValue(met, out string? settled))
        {
            settled = "SIGHT" + (char)('A' + tags.Count);
            tags.Add(met, settled);
        }

        return settled;
    }

    [GeneratedRegex(@"(?<tag>[A-Z]{6})\+Sightglass")]
    private static partial Regex FontTag();

    [GeneratedRegex(@"<xmp:(?<what>\w+Date)>\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d<")]
    private static partial Regex MetadataDate();

    [GeneratedRegex(@"/(?<what>CreationDate|ModDate)\(D:\d{14}[+-]\d\d'\d\d'\)")]
    private static partial Regex InfoDate();

    [GeneratedRegex(@"uuid:[0-9a-fA-F-]{36}")]
    private static partial Regex Uuid();

    [GeneratedRegex(@"/ID\[<[0-9A-F]{32}><[0-9A-F]{32}>\]")]
    private static partial Regex FileId();
}
