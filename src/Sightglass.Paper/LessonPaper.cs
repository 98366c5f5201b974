using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using Sightglass.Book.Model;
using Sightglass.Drawing.Plan;
using Sightglass.Training.Lessons;

namespace Sightglass.Paper;

/// <summary>A lesson to read on a screen and to print: the whole first, then stop by stop, the sign-in sheet last. The same on its page and in a file that stands alone.</summary>
public static class LessonPaper
{
    private const string Mark = "<svg viewBox=\"0 0 18 16\" aria-hidden=\"true\"><path d=\"M9 .8 17.4 15.2H.6z\" fill=\"currentColor\"/><path d=\"M9 5.2v5.2M9 12v1.7\" stroke=\"var(--mark)\" stroke-width=\"1.9\"/></svg>";

    /// <summary>Its style, beside the look's own sheet.</summary>
    public static string Css => PaperFiles.Text("lesson.css");

    /// <summary>One element.</summary>
    public static string Write(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        StringBuilder page = new();
        page.Append("<article class=\"lesson\"><p class=\"eyebrow\">A lesson round the machine</p><h1 tabindex=\"-1\"><b>").Append(Text(LessonWords.Title(plan))).Append("</b></h1><p class=\"lead\">").Append(Text(LessonWords.Summary(plan))).Append("</p>");
        Plan(page, plan);
        page.Append("<div class=\"two\">");
        List(page, "To arrange", LessonWords.Arrange(plan));
        List(page, "To bring", LessonWords.Bring(plan));
        page.Append("</div>");
        Stations(page, plan);
        List(page, "If the machine is taken away", LessonWords.Fallback(plan));
        Signing(page, plan);
        page.Append("</article>");
        return page.ToString();
    }

    /// <summary>The way from above; a train is too long to be read there.</summary>
    private static void Plan(StringBuilder page, LessonPlan plan)
    {
        ClassBook book = plan.Route.Book;
        if (book.Vehicles.Length > 1)
        {
            return;
        }

        ImmutableDictionary<string, string>.Builder numbers = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        int at = 0;
        foreach (LessonStop stop in plan.Stops)
        {
            numbers[stop.Stop.Place.Name] = (++at).ToString(CultureInfo.InvariantCulture);
        }

        page.Append("<figure class=\"way\">").Append(PlanDrawing.Render(book, new PlanOptions { Width = 820, Way = [.. plan.Route.Way], Numbers = numbers.ToImmutable() }));
        page.Append("<figcaption class=\"cap\"><b>Plate.</b> The way from above, front to the left, with the numbers of the stops.</figcaption></figure>");
    }

    private static void Stations(StringBuilder page, LessonPlan plan)
    {
        int at = 0;
        for (int i = 0; i < plan.Stations.Length; i++)
        {
            page.Append("<section><h2>").Append(plan.Stations.Length == 1 ? "Stop by stop" : $"Station {i + 1}, {LessonWords.Minutes(plan.Stations[i].Seconds)}").Append("</h2>");
            foreach (LessonStop stop in plan.Stations[i].Stops)
            {
                Stop(page, ++at, stop);
            }

            page.Append("</section>");
        }
    }

    private static void Stop(StringBuilder page, int at, LessonStop stop)
    {
        string turns = stop.Turns > 1 ? $", {stop.Turns} turns, room for {stop.Stop.Place.Room}" : "";
        page.Append("<article class=\"stop\"><header><span class=\"num\">").Append(at).Append("</span><h3>").Append(Text(Capital(stop.Stop.Place.Name))).Append("</h3><span class=\"small\">");
        page.Append(Text(LessonWords.Minutes(stop.Seconds) + turns)).Append("</span></header>");
        foreach (Caution caution in stop.Cautions)
        {
            string word = caution.Word.ToString();
            page.Append("<div class=\"hz ").Append(word.ToLowerInvariant()).Append("\" role=\"note\"><h4>").Append(caution.Word == SignalWord.Notice ? "" : Mark).Append(word.ToUpperInvariant()).Append("</h4><p>").Append(Text(caution.Text)).Append("</p></div>");
        }

        foreach (LessonPoint point in stop.Points)
        {
            string hands = point.Hands ? $" <b>Hands:</b> each in turn, and back as it was{(point.Permission is { } owner ? $", with permission of the {Text(owner)}" : "")}." : "";
            page.Append("<span class=\"tag\">Show</span><p><b>").Append(Text(Capital(point.Item.Name))).Append(".</b> ").Append(Text(string.Join(" ", point.Says))).Append(hands).Append("</p>");
        }

        foreach (Question question in stop.Questions)
        {
            page.Append("<span class=\"tag\">Ask</span><p>").Append(Text(question.Asked)).Append(" <span class=\"answer\">").Append(Text(question.Answer)).Append("</span></p>");
        }

        page.Append("</article>");
    }

    private static void Signing(StringBuilder page, LessonPlan plan)
    {
        page.Append("<section class=\"signing\"><h2>Sign-in sheet</h2><p class=\"small\">").Append(Text($"{LessonWords.Title(plan)}. Date, place, who taught:")).Append(" ______________________________</p>");
        page.Append("<table class=\"sign\"><thead><tr><th>Name</th><th>Number</th><th>Role</th><th>Signature</th></tr></thead><tbody>");
        for (int i = 0; i < Math.Min(plan.Request.People + 2, 40); i++)
        {
            page.Append("<tr><td></td><td></td><td></td><td></td></tr>");
        }

        page.Append("</tbody></table></section>");
    }

    private static void List(StringBuilder page, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        page.Append("<section><h2>").Append(title).Append("</h2><ul class=\"list\">");
        foreach (string line in all)
        {
            page.Append("<li>").Append(Text(line)).Append("</li>");
        }

        page.Append("</ul></section>");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Text(string text) => WebUtility.HtmlEncode(text);
}
