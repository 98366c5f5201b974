using System.Net;
using System.Text;
using Sightglass.Paper.Document;
using Sightglass.Paper.Photos;

namespace Sightglass.Paper.Html;

/// <summary>Writes photographs with their marks and what these mean.</summary>
internal static class HtmlPhotos
{
    public static void Write(StringBuilder page, PaperBlock.Photos photos, bool alone)
    {
        page.Append("<div class=\"photos").Append(photos.Row.Length == 1 ? " one" : "").Append("\">");
        foreach (PaperPhoto photo in photos.Row)
        {
            string source = alone ? $"data:{photo.File.Type};base64,{Convert.ToBase64String(photo.File.Bytes)}" : photo.Address;
            page.Append("<figure><div class=\"photo-paper\"><img src=\"").Append(Text(source)).Append("\" alt=\"").Append(Text(photo.Alt)).Append("\"/>");
            foreach (PhotoMark mark in photo.Marks)
            {
                page.Append(FormattableString.Invariant($"<span class=\"photo-number\" aria-hidden=\"true\" style=\"left:{100 * mark.X:0.##}%;top:{100 * mark.Y:0.##}%;width:{100 * mark.Width:0.##}%;height:{100 * mark.Height:0.##}%\"><b>{mark.Number}</b></span>"));
            }

            page.Append("</div><figcaption class=\"cap\">").Append(HtmlPaper.Text(photo.Caption)).Append("</figcaption></figure>");
        }

        page.Append("</div>");
    }

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
