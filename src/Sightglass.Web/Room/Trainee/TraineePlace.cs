using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;
using Sightglass.World.People;

namespace Sightglass.Web.Room.Trainee;

/// <summary>Where somebody stands: what is seen, heard and smelled there, the machine from there, what is within reach, and the ways onward.</summary>
internal static class TraineePlace
{
    private const int MostJoined = 8;

    public static void Add(PieceMaker pieces, BoundDrill bound, DrillLook look, Sight sight, int person, TraineeDesk desk, HoldReason held)
    {
        ClassBook book = bound.Plan.Book;
        Role role = book.Roles[bound.Situation.People[person].Role];
        TraineeMap map = TraineeMap.Of(bound.Plan);
        pieces.Add("main", "", "here", static _ => "<div class=\"here\">" + Html.Slot("state", "div", "aria-live=\"polite\"") + Html.Slot("place", "div") + Html.Slot("signs", "div", "class=\"signs\" aria-live=\"polite\"") + Html.Slot("plate", "div", "class=\"plate-box\"")
            + Html.Slot("ways", "nav", $"class=\"ways\" aria-label=\"{Html.Encode(Say.It("Ways from here"))}\"") + Html.Slot("far", "form", "class=\"far\" data-do=\"walk\"") + Html.Slot("reach", "section", $"class=\"reach\" aria-label=\"{Html.Encode(Say.It("Within reach"))}\"") + Html.Slot("photos", "section", "class=\"photos\"") + "</div>");
        string? stands = Stands(look, held, bound.Drill);
        pieces.Add("state", "main", (stands, desk.Doubt, desk.Refused, desk.CardInHand), static of => State(of.stands, of.Doubt, of.Refused, of.CardInHand));
        pieces.Add("place", "main", (sight.Place, sight.Towards, sight.IsBusy, book), static of => Title(of.Place, of.Towards, of.IsBusy, of.book));
        pieces.Add("signs", "main", (sight.Place, new Listed<string>(sight.Signs), new Listed<string>(sight.Roles), new Listed<string>(sight.Shut), sight.Missed, book), static of => Signs(of.Place, of.Item2.All, of.Item3.All, Found(of.Item4.All, of.Missed), of.book));
        string? at = sight.Place ?? sight.Towards;
        pieces.Add("plate", "main", at is null ? "" : map.Plate(at, sight.Roles.Length, sight.Place is null), static plate => plate);
        pieces.Add("ways", "main", (map, sight.Place, role, new Listed<string>(sight.Shut)), static of => of.Place is { } here ? Ways(of.map, here, of.role, of.Item4.All) : "");
        pieces.Add("far", "main", (map, role), static of => Far(of.map, of.role));
        if (sight.Place is not null)
        {
            TraineeReach.Add(pieces, bound, sight, role);
        }
        else
        {
            pieces.Add("reach", "main", "way", static _ => $"<p class=\"small\">{Html.Encode(Say.It("On the way there is nothing to read."))}</p>");
        }

        TraineePhotos.Add(pieces, book, sight);
    }

    /// <summary>Why the clock stands, or null where it goes.</summary>
    private static string? Stands(DrillLook look, HoldReason held, Drill drill) => look.Trouble is not null ? Say.It("The numbers cannot go on. Tell the instructor.")
            : look.IsOver ? Say.It("It is over. What must stay so has its time; the sheet comes at once.")
            : held.HasFlag(HoldReason.Stop) ? Say.With($"Stopped. Everybody stands still until the instructor lets go: {drill.StopWord}")
            : held.HasFlag(HoldReason.Lost) ? Say.It("Held: somebody’s page is away. Nothing is lost.")
            : held != HoldReason.None ? Say.It("Held. Nothing moves; look, think, answer.")
            : look.IsTakenOver ? Say.It("The instructor has taken over. Watch.")
            : null;

    private static string State(string? stands, (string Item, string Position, Breach Breach)? asked, string? refused, string? card)
    {
        StringBuilder told = new();
        if (stands is not null)
        {
            told.Append("<p class=\"stands\">").Append(Html.Encode(stands)).Append("</p>");
        }

        if (asked is { } doubt)
        {
            told.Append("<div class=\"doubt\" role=\"alert\"><p>").Append(Html.Encode(doubt.Breach == Breach.MayNot
                ? Say.With($"Your role may not operate {doubt.Item}. You can; it will be noted.")
                : Say.With($"You have no permission for {doubt.Item}. You can operate it; it will be noted."))).Append("</p>")
                .Append(Html.Button("doubt-do", Html.Encode(Say.It("Operate it all the same")), "operate", [("what", doubt.Item), ("to", doubt.Position), ("sure", "yes")]))
                .Append(Html.Button("doubt-leave", Html.Encode(Say.It("Leave it")), "card", [("what", card ?? "")], "btn quiet")).Append("</div>");
        }

        if (refused is { } why)
        {
            told.Append("<p class=\"trouble\" role=\"alert\">").Append(Html.Encode(Say.With($"Not done: {why}."))).Append("</p>");
        }

        return told.ToString();
    }

    private static string Title(string? place, string? towards, bool isBusy, ClassBook book)
    {
        if (place is null)
        {
            return $"<h1 id=\"where\">{Html.Encode(Say.With($"On the way to {towards ?? ""}"))}</h1>";
        }

        string busy = isBusy ? $" <span class=\"small busy\">{Html.Encode(Say.It("your hands are busy"))}</span>" : "";
        string text = book.Places[place].Text;
        return $"<h1 id=\"where\">{Html.Encode(Words.Capital(place))}{busy}</h1>" + (text.Length > 0 ? $"<p class=\"small\">{Html.Encode(Say.Book(text))}</p>" : "");
    }

    private static string Signs(string? place, ImmutableArray<string> signs, ImmutableArray<string> roles, string[] found, ClassBook book)
    {
        StringBuilder made = new();
        foreach ((string sense, string words) in new[] { ("seen", Say.It("You see")), ("heard", Say.It("You hear")), ("smelled", Say.It("You smell")), ("felt", Say.It("You feel")) })
        {
            string[] said = [.. signs.Where(s => book.Signs[s].Sense == sense).Select(s => Say.Begin(Say.Book(s)) + ".")];
            if (sense == "seen" && roles.Length > 0)
            {
                said = [Say.Begin(string.Join(", ", roles.Select(Say.Book))) + ".", .. said];
            }

            if (said.Length > 0)
            {
                made.Append("<div><h2>").Append(Html.Encode(words)).Append("</h2><p>").Append(Html.Encode(string.Join(' ', said))).Append("</p></div>");
            }
        }

        if (found.Length > 0)
        {
            made.Append("<div><h2>").Append(Html.Encode(Say.It("You found out"))).Append("</h2><p>").Append(Html.Encode(string.Join(' ', found))).Append("</p></div>");
        }

        return made.Length > 0 || place is null ? made.ToString() : $"<div><p class=\"small\">{Html.Encode(Say.It("Nothing is noticed here but what is within reach."))}</p></div>";
    }

    /// <summary>What somebody has found out about the ways.</summary>
    private static string[] Found(ImmutableArray<string> shut, string? missed) =>
    [
        .. shut.IsEmpty ? Array.Empty<string>() : [Say.With($"Nobody gets by: {string.Join("; ", shut)}.")],
        .. missed is null ? Array.Empty<string>() : [Say.With($"There is no way to {missed}.")],
    ];

    private static string Ways(TraineeMap map, string here, Role role, ImmutableArray<string> shut)
    {
        StringBuilder made = new();
        (string? back, string? onward) = map.Beside(here);
        (string Place, double Seconds)[] joined = [.. map.Joined(here, role, shut).Where(j => j.Place != back && j.Place != onward && Reaches(role, j.Place)).OrderBy(j => j.Seconds).Take(MostJoined)];
        (string? left, string? right) = map.RunsLeft ? (onward, back) : (back, onward);
        Way(left, "left", "←");
        made.Append("<div class=\"doors\">");
        foreach ((int i, (string place, double seconds)) in joined.Index())
        {
            made.Append(Button(FormattableString.Invariant($"door-{i}"), place, seconds, ""));
        }

        made.Append("</div>");
        Way(right, "right", "→");
        return made.ToString();

        void Way(string? place, string id, string arrow)
        {
            if (place is not null && Reaches(role, place) && double.IsFinite(map.Seconds(here, place, role, shut)))
            {
                made.Append(Button(id, place, map.Seconds(here, place, role, shut), arrow));
            }
        }
    }

    private static string Button(string id, string place, double seconds, string arrow) => Html.Button(
        "way-" + id,
        (arrow == "←" ? "<kbd aria-hidden=\"true\">←</kbd> " : "") + $"<span>{Html.Encode(Words.Capital(place))}</span> <span class=\"num\">{Math.Ceiling(seconds):0} s</span>" + (arrow == "→" ? " <kbd aria-hidden=\"true\">→</kbd>" : ""),
        "walk", [("what", place)], "btn way");

    private static string Far(TraineeMap map, Role role)
    {
        StringBuilder made = new();
        made.Append("<label for=\"far-place\">").Append(Html.Encode(Say.It("Farther"))).Append("</label><select id=\"far-place\" name=\"what\">");
        foreach (string place in map.Places.Where(p => Reaches(role, p)))
        {
            made.Append("<option value=\"").Append(Html.Encode(place)).Append("\">").Append(Html.Encode(Words.Capital(place))).Append("</option>");
        }

        return made.Append("</select><button class=\"btn\" id=\"far-go\">").Append(Html.Encode(Say.It("Walk there"))).Append("</button>").ToString();
    }

    private static bool Reaches(Role role, string place) => !role.IsBound || role.Reaches.Contains(place);
}
