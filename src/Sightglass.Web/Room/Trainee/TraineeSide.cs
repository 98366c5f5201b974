using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.World.Journal;

namespace Sightglass.Web.Room.Trainee;

/// <summary>What somebody has with them: the card, the notebook, the radio, and what they can say of the drill.</summary>
internal static class TraineeSide
{
    private const int MostSaid = 12;
    private const int MostNotes = 12;

    public static void Add(PieceMaker pieces, RoomDrill drill, BoundDrill bound, DrillLook look, Sight sight, Seat seat, TraineeDesk desk)
    {
        pieces.Add("side", "", (drill.IsAlone, bound, seat.Person, desk.CardInHand), static of => Frame(of.IsAlone, of.bound, of.Person, of.CardInHand));
        if (drill.IsAlone)
        {
            pieces.Add("pace", "side", (Goes: drill.Session?.Held == HoldReason.None, drill.Session?.Wanted), static of => of.Wanted is { } wanted ? PaceOf(of.Goes, wanted) : "");
        }

        if (bound.Drill.WithCards)
        {
            pieces.Add("card", "side", (bound, desk.CardInHand), static of => of.CardInHand is { } name ? TraineeCards.Text(of.bound, name) : "");
        }

        bool isOwn = seat.Person == bound.Person;
        int said = isOwn ? look.Notes.LastOrDefault(n => n.Kind is DrillNoteKind.ReportedRight or DrillNoteKind.ReportedWrong)?.Number ?? -1 : -1;
        int hints = look.Notes.Count(n => n.Kind == DrillNoteKind.Hint);
        pieces.Add("notes", "side", new Listed<(SimTime At, string Text)>(seat.Notes), static notes => string.Concat(notes.All.TakeLast(MostNotes).Select(n => Row(n.At.Seconds, n.Text))));
        pieces.Add("said", "side", new Listed<JournalEntry>(look.Said), static lines => string.Concat(lines.All.TakeLast(MostSaid).Select(e => Row(e.Time.Seconds, e.Text))));
        pieces.Add("held", "side", (bound.Plan.Book, new Listed<string>(sight.Held)), static of => Held(of.Book, of.Item2.All));
        pieces.Add("findings", "side", (bound.Drill, isOwn, said), static of => of.isOwn ? Findings(of.Drill, of.said) : "");
        pieces.Add("hints", "side", (bound.Drill, isOwn, hints), static of => of.isOwn ? Hints(of.Drill, of.hints) : "");
    }

    private static string Frame(bool alone, BoundDrill bound, int person, string? card)
    {
        StringBuilder side = new();
        if (alone)
        {
            side.Append(Box("time", Say.It("Clock"), Html.Slot("pace", "div", "class=\"pace\"")));
        }

        if (bound.Drill.WithCards)
        {
            side.Append(Box("cards", Say.It("Card"), CardChoice(bound, card) + Html.Slot("card", "div", $"class=\"in-hand\" tabindex=\"0\" role=\"region\" aria-label=\"{Html.Encode(Say.It("Card in hand"))}\"")));
        }

        side.Append(Box("notebook", Say.It("Notebook"), Html.Slot("notes", "ol", "class=\"lines\"") + Line("note", Say.It("Write a line"), Say.It("Note it"))));
        side.Append(Box("radio", Say.It("Radio"), Html.Slot("said", "ol", "class=\"lines\" aria-live=\"polite\"") + Tell(bound, person) + Html.Slot("held")));
        side.Append(Box("finish", Say.It("When you are done"), Html.Slot("findings") + Html.Slot("hints") + Html.Button("done", Html.Encode(Say.It("I am done")), "done", null, "btn key")));
        return side.ToString();
    }

    private static string Box(string id, string title, string inside) => $"<section class=\"box\" id=\"{id}\" aria-labelledby=\"{id}-title\"><h2 id=\"{id}-title\" tabindex=\"-1\">{Html.Encode(title)}</h2>{inside}</section>";

    private static string Row(double seconds, string text) => $"<li><time>{Words.Clock(seconds)}</time> <span>{Html.Encode(text)}</span></li>";

    private static string Line(string does, string label, string button) =>
        $"<form class=\"line\" data-do=\"{does}\"><input type=\"text\" id=\"{does}-text\" name=\"to\" maxlength=\"300\" autocomplete=\"off\" aria-label=\"{Html.Encode(label)}\" placeholder=\"{Html.Encode(label)}\"><button class=\"btn\" id=\"{does}-send\">{Html.Encode(button)}</button></form>";

    private static string Tell(BoundDrill bound, int person)
    {
        StringBuilder made = new();
        made.Append("<form class=\"line tell\" data-do=\"tell\"><select id=\"tell-whom\" name=\"what\" aria-label=\"").Append(Html.Encode(Say.It("To whom"))).Append("\">");
        foreach (string role in bound.Plan.Book.Roles.Keys.Where(r => r != bound.Situation.People[person].Role))
        {
            made.Append("<option value=\"").Append(Html.Encode(role)).Append("\">").Append(Html.Encode(Words.Capital(role))).Append("</option>");
        }

        return made.Append("</select><input type=\"text\" id=\"tell-text\" name=\"to\" maxlength=\"300\" autocomplete=\"off\" aria-label=\"").Append(Html.Encode(Say.It("What you say"))).Append("\" placeholder=\"").Append(Html.Encode(Say.It("What you say")))
            .Append("\"><button class=\"btn\" id=\"tell-send\">").Append(Html.Encode(Say.It("Say it"))).Append("</button></form>").ToString();
    }

    /// <summary>Protections that are held, and those that can be asked for.</summary>
    private static string Held(ClassBook book, ImmutableArray<string> has)
    {
        StringBuilder made = new();
        foreach ((int i, string held) in has.Index())
        {
            made.Append("<li><span>").Append(Html.Encode(Say.With($"You hold: {held}"))).Append("</span> ");
            if (book.Protections.ContainsKey(held))
            {
                made.Append(Html.Button(FormattableString.Invariant($"give-{i}"), Html.With(Say.It("Give it back"), Say.Book(held)), "give back", [("what", held)], "btn quiet"));
            }

            made.Append("</li>");
        }

        foreach ((int i, Protection asked) in book.Protections.Values.Where(p => p.Sort == ProtectionSort.Asked && !has.Contains(p.Name)).OrderBy(p => p.Span).Index())
        {
            made.Append("<li>").Append(Html.Button(FormattableString.Invariant($"want-{i}"), Html.Encode(Say.With($"Ask the {asked.AskedOf} for {asked.Name}")), "ask", [("what", asked.Name)], "btn quiet")).Append("</li>");
        }

        return made.Length == 0 ? "" : $"<ul class=\"asks\">{made}</ul>";
    }

    private static string Findings(Drill drill, int last)
    {
        if (drill.Reports.IsEmpty)
        {
            return "";
        }

        StringBuilder made = new();
        made.Append("<form class=\"line\" data-do=\"report\"><select id=\"finding\" name=\"what\" aria-label=\"").Append(Html.Encode(Say.It("What you found"))).Append("\">");
        foreach ((int i, DrillReport report) in drill.Reports.Index())
        {
            made.Append("<option value=\"").Append(Html.Encode(report.Name)).Append(i == last ? "\" selected>" : "\">").Append(Html.Encode(Words.Capital(report.Name))).Append("</option>");
        }

        made.Append("</select><button class=\"btn\" id=\"report-send\">").Append(Html.Encode(Say.It("Report it"))).Append("</button></form>");
        return made.Append(last >= 0 ? $"<p class=\"small\">{Html.Encode(Say.With($"You reported: {drill.Reports[last].Name}"))}</p>" : "").ToString();
    }

    private static string Hints(Drill drill, int taken)
    {
        if (drill.Hints.IsEmpty)
        {
            return "";
        }

        StringBuilder made = new();
        foreach (DrillHint hint in drill.Hints.Take(taken))
        {
            made.Append("<p class=\"hint\">").Append(Html.Encode(Say.Book(hint.Says))).Append("</p>");
        }

        if (taken < drill.Hints.Length)
        {
            made.Append(Html.Button("hint", Html.Encode(drill.IsQualifying ? Say.It("A hint (then it is not passed)") : Say.With($"A hint (costs {drill.Hints[taken].Costs})")), "hint", null, "btn quiet"));
        }

        return made.ToString();
    }

    private static string CardChoice(BoundDrill bound, string? card)
    {
        StringBuilder made = new();
        made.Append("<form class=\"line\" data-do=\"card\"><select id=\"card-which\" name=\"what\" aria-label=\"").Append(Html.Encode(Say.It("Card in hand"))).Append("\"><option value=\"\">").Append(Html.Encode(Say.It("none in hand"))).Append("</option>");
        foreach ((string name, string title) in TraineeCards.Of(bound.Plan.Book))
        {
            made.Append("<option value=\"").Append(Html.Encode(name)).Append(name == card ? "\" selected>" : "\">").Append(Html.Encode(title)).Append("</option>");
        }

        return made.Append("</select><button class=\"btn\" id=\"card-take\">").Append(Html.Encode(Say.It("Take it"))).Append("</button></form>").ToString();
    }

    private static string PaceOf(bool goes, Pace wanted)
    {
        StringBuilder made = new();
        made.Append("<div class=\"seg\" role=\"group\" aria-label=\"").Append(Html.Encode(Say.It("Time"))).Append("\">");
        made.Append(Html.Button("hold", Html.Encode(Say.It("Hold")), goes ? "hold" : "go", null, "", $"aria-pressed=\"{(goes ? "false" : "true")}\""));
        foreach (Pace pace in new[] { Pace.Real, Pace.Four, Pace.Fifteen, Pace.Sixty })
        {
            made.Append(Html.Button($"pace-{(int)pace}", pace.Says(), "pace", [("to", FormattableString.Invariant($"{(int)pace / 2}"))], "", $"aria-pressed=\"{(wanted == pace ? "true" : "false")}\""));
        }

        made.Append("</div>").Append(Html.Button("back-60", Html.Encode(Say.It("Back 1 min")), "back", [("to", "60")], "btn quiet")).Append(Html.Button("give-up", Html.Encode(Say.It("Give up")), "leave", null, "btn quiet"));
        return made.ToString();
    }
}
