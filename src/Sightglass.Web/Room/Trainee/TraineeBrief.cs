using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>What is read out before a drill begins.</summary>
internal static class TraineeBrief
{
    public static void Add(PieceMaker pieces, RoomDrill drill, BoundDrill bound)
    {
        pieces.Add("main", "", (bound, drill.IsAlone), static of => Page(of.bound, of.IsAlone));
        pieces.Add("side", "", "", static none => none);
    }

    private static string Page(BoundDrill bound, bool alone)
    {
        Book.Model.Drill told = bound.Drill;
        StringBuilder page = new();
        page.Append("<div class=\"brief\"><h1>").Append(Html.Encode(Words.Capital(told.Name))).Append("</h1><p class=\"lead\">").Append(Html.Encode(Say.Book(told.Aim))).Append("</p><dl>");
        Row(Say.It("You are"), Say.Book(told.Role));
        Row(Say.It("Time"), Words.Clock(told.TimeLimit));
        Row(Say.It("It is"), told.IsQualifying ? Say.It("an assessment: with a hint it is not passed") : Say.It("practice: nothing of it counts"));
        Row(Say.It("Cards"), told.WithCards ? Say.It("you may have them in hand") : Say.It("without"));
        Row(Say.It("In hand"), string.Join(", ", told.Tools.Select(Say.Book)));
        Row(Say.It("To stop everything"), told.StopWord.Length == 0 ? "" : Say.With($"say “{told.StopWord}”, or press Stop: unsafe"));
        page.Append("</dl>");
        if (!told.NotReal.IsEmpty)
        {
            page.Append("<h2>").Append(Html.Encode(Say.It("Not as on a real machine"))).Append("</h2><ul class=\"plain-list\">");
            foreach (string what in told.NotReal)
            {
                page.Append("<li>").Append(Html.Encode(Say.Book(what))).Append("</li>");
            }

            page.Append("</ul>");
        }

        page.Append("<p class=\"small\">").Append(Html.Encode(Say.It("A real machine is never worked by what this page says."))).Append("</p>");
        page.Append(alone
            ? Html.Button("go", Html.Encode(Say.It("Begin")), "go", null, "btn key")
            : $"<p class=\"waits\" role=\"status\">{Html.Encode(Say.It("The instructor begins it."))}</p>");
        return page.Append("</div>").ToString();

        void Row(string name, string value)
        {
            if (value.Length > 0)
            {
                page.Append("<dt>").Append(Html.Encode(name)).Append("</dt><dd>").Append(Html.Encode(value)).Append("</dd>");
            }
        }
    }
}
