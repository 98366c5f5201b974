using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Training.Evaluation;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>The evaluation, when a drill is done with, and what is to be talked about.</summary>
internal static class TraineeSheet
{
    public static void Add(PieceMaker pieces, RoomDrill drill, BoundDrill bound, DrillLook look, Seat seat)
    {
        pieces.Add("main", "", (bound, look.IsJudged, Sheet: seat.Person == bound.Person ? look.Sheet : null, new Listed<string>(drill.Coached), drill.IsAlone), static of => Page(of.bound, of.IsJudged, of.Sheet, of.Item4.All, of.IsAlone));
        pieces.Add("side", "", "", static none => none);
    }

    /// <param name="bound">The drill.</param>
    /// <param name="judged">Whether it came to its end.</param>
    /// <param name="own">The sheet, for whom it is about.</param>
    /// <param name="coached">Advice.</param>
    /// <param name="alone">Whether it is practised alone.</param>
    private static string Page(BoundDrill bound, bool judged, EvaluationSheet? own, ImmutableArray<string> coached, bool alone)
    {
        StringBuilder page = new();
        page.Append("<div class=\"sheet\">");
        if (judged && own is { } sheet)
        {
            Sheet(page, sheet, bound.Drill);
        }
        else
        {
            page.Append("<h1>").Append(Html.Encode(judged ? Say.It("The drill is over.") : Say.It("The drill was ended before its time."))).Append("</h1><p class=\"lead\">").Append(Html.Encode(Say.It("What was done is kept."))).Append("</p>");
        }

        if (judged && !bound.Drill.Asks.IsEmpty)
        {
            page.Append("<h2>").Append(Html.Encode(Say.It("To talk about"))).Append("</h2><ul class=\"plain-list\">");
            foreach (Question question in bound.Drill.Asks)
            {
                page.Append("<li><details><summary>").Append(Html.Encode(Say.Book(question.Asked))).Append("</summary><p>").Append(Html.Encode(Say.Book(question.Answer))).Append("</p></details></li>");
            }

            page.Append("</ul>");
        }

        foreach (string advice in coached)
        {
            page.Append("<p class=\"coached\"><b>").Append(Html.Encode(Say.It("From the instructor, apart from what counts:"))).Append("</b> ").Append(Html.Encode(advice)).Append("</p>");
        }

        if (alone)
        {
            page.Append("<div class=\"again\">").Append(Html.Button("again", Html.Encode(Say.It("Once more")), "practise", [("what", bound.Drill.Name)], "btn key")).Append(" <a class=\"btn\" href=\"/drill/free\">").Append(Html.Encode(Say.It("Another drill"))).Append("</a></div>");
        }

        return page.Append("</div>").ToString();
    }

    private static void Sheet(StringBuilder page, EvaluationSheet sheet, Drill drill)
    {
        EvaluationLine? decides = sheet.Failures.FirstOrDefault();
        page.Append("<h1>").Append(Html.Encode(sheet.IsPassed ? Say.It("Passed.") : Say.It("Not passed."))).Append("</h1><p class=\"lead\">");
        page.Append(Html.Encode(sheet.IsPassed ? Say.With($"{Number(sheet.Points)} of {Number(sheet.MostPoints)} points, {Number(sheet.NeededPoints)} were needed.")
            : decides is null ? Say.With($"{Number(sheet.Points)} of {Number(sheet.MostPoints)} points; {Number(sheet.NeededPoints)} were needed.")
            : Say.With($"What decided it: {decides.Said}.")));
        page.Append("</p><p class=\"small\">").Append(Html.Encode(drill.IsQualifying ? Say.It("An assessment.") : Say.It("Practice: nothing of it counts."))).Append("</p><ol class=\"marks\">");
        foreach (EvaluationLine line in sheet.Lines)
        {
            page.Append("<li class=\"").Append(line.IsMet ? "met" : line.IsCritical ? "broken" : "missed").Append("\"><span class=\"mark\" aria-hidden=\"true\">").Append(line.IsMet ? "✓" : line.IsCritical ? "✕" : "○").Append("</span><div><p>")
                .Append(Html.Encode(line.Said)).Append(line.IsCritical ? $" <i>{Html.Encode(Say.It("critical"))}</i>" : "").Append("<span class=\"vh\"> ").Append(Html.Encode(line.IsMet ? Say.It("met") : Say.It("not met"))).Append("</span></p><p class=\"small\">").Append(Html.Encode(line.Shown));
            page.Append(line.IsMet || line.Because.Length == 0 ? "" : " " + Html.Encode(Say.Book(line.Because))).Append("</p></div></li>");
        }

        page.Append("</ol>");
    }

    private static string Number(double points) => points.ToString("0.#", CultureInfo.InvariantCulture);
}
