using System.Text;
using Sightglass.Book.Model;
using Sightglass.Drawing.Look;
using Sightglass.Paper;
using Sightglass.Training.Lessons;

namespace Sightglass.Cli.Reports;

/// <summary>A lesson as one page that stands alone.</summary>
internal static class LessonPage
{
    private const string OwnStyle = "@page{margin:14mm}@media print{.head{padding-left:0;padding-right:0}}";

    public static string Write(LessonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ClassBook book = plan.Route.Book;
        string machine = book.RoadNumberInUse is { } number ? $"{book.Title} {number}" : book.Title;
        StringBuilder page = new();
        page.Append("<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>").Append(Html.Text($"Lesson: {LessonWords.Title(plan)}"));
        page.Append("</title><style>").Append(LookStyle.ReportCss).Append(LessonPaper.Css).Append(OwnStyle).Append("</style></head><body>");
        page.Append("<header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav><span class=\"where\">").Append(Html.Text($"{machine}, edition {book.Edition}")).Append("</span></header><main>");
        page.Append(LessonPaper.Write(plan));
        page.Append("</main><footer class=\"foot\"><span class=\"keys\"></span><span>").Append(Html.Text($"{book.Notice} {LessonWords.Decide}")).Append("</span></footer></body></html>");
        return page.ToString();
    }
}
