using System.Globalization;
using System.Net;
using System.Text;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Paper;

/// <summary>A card for the pocket, with the very text that was tried and its stamp.</summary>
public static class PocketPaper
{
    /// <summary>Its style, beside the look's own sheet.</summary>
    public static string Css => PaperFiles.Text("pocket.css");

    /// <summary>One element.</summary>
    /// <param name="card">Without errors.</param>
    /// <param name="stamp">What is said of it.</param>
    /// <param name="notice">The book's own, for the demo that all is invented.</param>
    public static string Write(Card card, PocketStamp stamp, string notice)
    {
        ArgumentNullException.ThrowIfNull(card);
        ArgumentNullException.ThrowIfNull(stamp);
        StringBuilder page = new();
        page.Append("<article class=\"pocket\"><h1>").Append(Text(card.Title)).Append("</h1>");
        Head(page, card);
        page.Append("<ol>");
        foreach (CardElement element in card.Elements)
        {
            switch (element)
            {
                case CardElement.Notice notice_:
                    Notice(page, notice_.Sentence, element);
                    break;
                case CardElement.Step step:
                    page.Append("<li><span class=\"n\">").Append(step.Number).Append("</span><span>").Append(Text(WithoutNumber(Flat(step.Span.Text)))).Append("</span></li>");
                    break;
                case CardElement.ListItem line:
                    page.Append("<li class=\"line\"><span aria-hidden=\"true\">–</span><span>").Append(Text(Flat(line.Span.Text).TrimStart('-', ' '))).Append("</span></li>");
                    break;
            }
        }

        page.Append("</ol>");
        Stamp(page, stamp, notice);
        page.Append("</article>");
        return page.ToString();
    }

    private static void Head(StringBuilder page, Card card)
    {
        page.Append("<div class=\"head-lines\">");
        foreach (CardElement.Head head in card.Elements.OfType<CardElement.Head>().Where(h => h.Sentences.All(s => s.Operation != Operation.Card)))
        {
            string text = Flat(head.Span.Text);
            int colon = text.IndexOf(':', StringComparison.Ordinal);
            page.Append("<p>").Append(colon < 0 ? Text(text) : $"<b>{Text(text[..(colon + 1)])}</b>{Text(text[(colon + 1)..])}").Append("</p>");
        }

        page.Append("</div>");
    }

    private static void Notice(StringBuilder page, Sentence sentence, CardElement element)
    {
        string text = Flat(element.Span.Text);
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        string word = colon < 0 ? sentence.Operation.ToString() : text[..colon];
        page.Append("<li class=\"notice\"><div class=\"hz ").Append(Text(word.ToLowerInvariant())).Append("\" role=\"note\"><h4>").Append(Text(word.ToUpperInvariant())).Append("</h4><p>").Append(Text(colon < 0 ? text : text[(colon + 1)..].Trim())).Append("</p></div></li>");
    }

    private static void Stamp(StringBuilder page, PocketStamp stamp, string notice)
    {
        string day = stamp.Printed.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        page.Append("<div class=\"stamp\"><p class=\"").Append(stamp.ApprovedBy is null ? "draft" : "approved").Append("\">").Append(stamp.ApprovedBy is { } who ? $"<b>Approved by {Text(who)}, {day}.</b>" : $"DRAFT of {day}, approved by nobody. Not to be worked by.").Append("</p>");
        foreach (string tried in stamp.Tried)
        {
            page.Append("<p>").Append(Text(tried)).Append("</p>");
        }

        string decide = notice.Contains("qualified people decide", StringComparison.OrdinalIgnoreCase) ? "" : " Local rules, the maker’s manual and qualified people decide.";
        page.Append("<p>").Append(Text(stamp.Book)).Append("</p><p>").Append(Text((notice + decide).Trim())).Append("</p></div>");
    }

    /// <summary>A text that was wrapped in its file, in one line; what stands in braces is for the program to fill in, and for a person to.</summary>
    private static string Flat(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal);

    private static string WithoutNumber(string step) => step.IndexOf(". ", StringComparison.Ordinal) is > 0 and var dot && step[..dot].All(char.IsDigit) ? step[(dot + 2)..] : step;

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
