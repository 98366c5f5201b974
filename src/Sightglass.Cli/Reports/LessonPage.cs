using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sightglass.Book.Model;
using Sightglass.Cli.Output;
using Sightglass.Drawing.Look;
using Sightglass.Drawing.Plan;
using Sightglass.Training.Lessons;

namespace Sightglass.Cli.Reports;

/// <summary>A lesson as one page that stands alone, to read on a screen and to print: the whole first, then stop by stop, the sign-in sheet last.</summary>
internal static class LessonPage
{
    private const string OwnStyle = """
        main{max-width:860px;width:100%;margin:0 auto;padding:32px var(--margin) 64px}
        h1{font:400 var(--t-plate)/1.12 var(--serif)}h1 b{font-weight:600}
        .lead{font:400 var(--t-lead)/1.55 var(--serif);margin-top:12px;max-width:60ch}
        h2{font:400 var(--t-title)/1.25 var(--serif);border-top:1px solid var(--ink);padding-top:10px;margin:40px 0 12px;break-after:avoid}
        .two{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:0 40px}
        .list li{padding:6px 0;border-bottom:1px solid var(--hair)}
        .plan{margin-top:28px}.plan svg{width:100%;height:auto}
        .stop{display:grid;grid-template-columns:72px minmax(0,1fr);gap:4px 20px;margin-top:28px}
        .stop>header{grid-column:1/-1;display:flex;align-items:baseline;gap:14px;border-bottom:1px solid var(--hair);padding-bottom:6px;break-after:avoid}
        .stop>header b{font:600 1.25rem/1.2 var(--serif)}.stop>header .num{font:600 var(--t-ui)/1 var(--sans);background:var(--ink);color:var(--paper);border-radius:10px;padding:4px 9px}
        .stop>header .small{margin-left:auto}
        .stop .tag{font:600 var(--t-label)/1.5 var(--sans);color:var(--ink2);padding-top:3px}
        .stop p{margin:2px 0 8px}.stop p b{font-weight:600}.stop .hz{grid-column:2;margin:4px 0 8px;break-inside:avoid}
        .answer{color:var(--ink2);font-style:italic}
        .sign{border-collapse:collapse;width:100%;font:400 var(--t-ui)/1 var(--sans)}.sign th{text-align:left;font-weight:600;padding:6px 8px;border-bottom:1px solid var(--ink)}.sign td{height:34px;border-bottom:1px solid var(--hair)}
        .signing{break-before:page}
        @media(max-width:720px){.two,.stop{grid-template-columns:1fr}.stop .hz{grid-column:1}}
        @page{margin:14mm}
        @media print{html{font-size:12.5px}main{padding:8px 0 0;max-width:none}.head{padding-left:0;padding-right:0}.stop p{break-inside:avoid}h2{margin-top:26px}.stop{margin-top:18px}}
        """;

    public static string Write(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClassBook book = plan.Route.Book;
        string machine = book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title;
        StringBuilder page = new();
        page.Append("<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>").Append(Html.Text($"Lesson: {LessonWords.Title(plan)}"));
        page.Append("</title><style>").Append(LookStyle.ReportCss).Append(OwnStyle).Append("</style></head><body>");
        page.Append("<header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav><span class=\"where\">").Append(Html.Text($"{machine}, edition {book.Edition}")).Append("</span></header><main>");
        page.Append("<p class=\"eyebrow\">A lesson round the machine</p><h1><b>").Append(Html.Text(LessonWords.Title(plan))).Append("</b></h1><p class=\"lead\">").Append(Html.Text(LessonWords.Summary(plan))).Append("</p>");
        Plan(page, plan);
        page.Append("<div class=\"two\">");
        List(page, "To arrange", LessonWords.Arrange(plan));
        List(page, "To bring", LessonWords.Bring(plan));
        page.Append("</div>");
        Stations(page, plan);
        List(page, "If the machine is taken away", LessonWords.Fallback(plan));
        Signing(page, plan);
        page.Append("</main><footer class=\"foot\"><span class=\"keys\"></span><span>").Append(Html.Text(book.Notice)).Append(" Local rules, the maker’s manual and qualified people decide what is done at the machine.</span></footer></body></html>");
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

        page.Append("<figure class=\"plan\">").Append(PlanDrawing.Render(book, new PlanOptions { Width = 820, Way = [.. plan.Route.Way], Numbers = numbers.ToImmutable() }));
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
        page.Append("<article class=\"stop\"><header><span class=\"num\">").Append(at).Append("</span><b>").Append(Html.Text(Capital(stop.Stop.Place.Name))).Append("</b><span class=\"small\">");
        page.Append(Html.Text(LessonWords.Minutes(stop.Seconds) + turns)).Append("</span></header>");
        foreach (Caution caution in stop.Cautions)
        {
            string word = caution.Word.ToString();
            page.Append("<div class=\"hz ").Append(word.ToLowerInvariant()).Append("\"><h4>").Append(word.ToUpperInvariant()).Append("</h4><p>").Append(Html.Text(caution.Text)).Append("</p></div>");
        }

        foreach (LessonPoint point in stop.Points)
        {
            string hands = point.Hands ? $" <b>Hands:</b> each in turn, and back as it was{(point.Permission is { } owner ? $", with permission of the {Html.Text(owner)}" : "")}." : "";
            page.Append("<span class=\"tag\">Show</span><p><b>").Append(Html.Text(Capital(point.Item.Name))).Append(".</b> ").Append(Html.Text(string.Join(" ", point.Says))).Append(hands).Append("</p>");
        }

        foreach (Question question in stop.Questions)
        {
            page.Append("<span class=\"tag\">Ask</span><p>").Append(Html.Text(question.Asked)).Append(" <span class=\"answer\">").Append(Html.Text(question.Answer)).Append("</span></p>");
        }

        page.Append("</article>");
    }

    private static void Signing(StringBuilder page, LessonPlan plan)
    {
        page.Append("<section class=\"signing\"><h2>Sign-in sheet</h2><p class=\"small\">").Append(Html.Text($"{LessonWords.Title(plan)}. Date, place, who taught:")).Append(" ______________________________</p>");
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
            page.Append("<li>").Append(Html.Text(line)).Append("</li>");
        }

        page.Append("</ul></section>");
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
