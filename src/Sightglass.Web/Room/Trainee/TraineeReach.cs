using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Basics.Quantities;
using Sightglass.Book.Model;
using Sightglass.Cards.Story;
using Sightglass.Drawing.Instruments;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>What is within reach, each thing drawn as it is, with what can be done with it.</summary>
internal static class TraineeReach
{
    private const int MostButtons = 4;
    private const int MostTogether = 14;
    private static readonly ConcurrentDictionary<int, string> s_ids = new();

    public static void Add(PieceMaker pieces, BoundDrill bound, Sight sight, Role role)
    {
        ClassBook book = bound.Plan.Book;
        Listed<(string Name, bool IsDrawn)> things = new([.. sight.Items.Select(i => (i.Name, IsDrawn(i)))]);
        pieces.Add("reach", "main", (book, Place: sight.Place!, things), static of => List(of.book, of.Place, of.things.All));
        foreach ((int i, SeenItem seen) in sight.Items.Index().Where(i => things.All[i.Index].IsDrawn))
        {
            pieces.Add(s_ids.GetOrAdd(i, static n => FormattableString.Invariant($"it-{n}")), "reach", (book.Items[seen.Name], seen, i, role, sight.IsBusy), static of => ItemOf(of.Item1, of.seen, of.i, of.role, of.IsBusy));
        }

        pieces.Add("guards", "reach", (book, Place: sight.Place!, things, new Listed<SeenGuard>(sight.Guards)), static of => Guards(of.book, of.Place, of.things.All, of.Item4.All));
    }

    private static string List(ClassBook book, string place, ImmutableArray<(string Name, bool IsDrawn)> things)
    {
        StringBuilder list = new();
        list.Append("<h2>").Append(Html.Encode(Say.It("Within reach"))).Append("</h2>");
        (int Number, string Name)[] drawn = [.. things.Index().Where(t => t.Item.IsDrawn).Select(t => (t.Index, t.Item.Name))];
        // Many things stand in groups, by what they belong to.
        foreach (var group in drawn.GroupBy(d => drawn.Length > MostTogether ? book.Items[d.Name].System : null))
        {
            list.Append(group.Key is null ? "" : $"<h3>{Html.Encode(Words.Capital(group.Key))}</h3>").Append("<ul>");
            foreach ((int i, _) in group)
            {
                list.Append(Html.Slot(FormattableString.Invariant($"it-{i}"), "li", FormattableString.Invariant($"data-dot=\"{i}\"")));
            }

            list.Append("</ul>");
        }

        list.Append(Plain(things)).Append(Html.Slot("guards", "div", "class=\"guards\""));
        // The name of the place is a part of it, so that it is written anew elsewhere.
        return $"<!-- {Html.Encode(place)} -->" + list;
    }

    /// <summary>Whether there is something to read or to operate.</summary>
    private static bool IsDrawn(SeenItem seen) => seen.Position is not null || seen.Shows is not null || seen.IsLit is not null;

    /// <summary>What only stands there.</summary>
    private static string Plain(ImmutableArray<(string Name, bool IsDrawn)> things)
    {
        string[] names = [.. things.Index().Where(i => !i.Item.IsDrawn).Select(i => $"<span data-dot=\"{i.Index}\">{Html.Encode(Say.Book(i.Item.Name))}</span>")];
        return names.Length == 0 ? "" : $"<p class=\"plain-here\"><span>{Html.Encode(Say.It("Also here:"))}</span> {string.Join(", ", names)}</p>";
    }

    private static string ItemOf(Item item, SeenItem seen, int number, Role role, bool busy)
    {
        StringBuilder made = new();
        string name = Words.Capital(item.Name);
        made.Append(InstrumentDrawing.Render(new(item, seen.Position, seen.Shows, seen.IsLit), Label(item, seen)));
        made.Append("<div><p class=\"name\">").Append(Html.Encode(name)).Append("</p>");
        string state = seen.Position is { } now ? PositionWords.Of(item.Name, now) : seen.IsLit is { } lit ? (lit ? Say.It("lit") : Say.It("dark")) : "";
        if (state.Length > 0)
        {
            made.Append("<p class=\"small\">").Append(Html.Encode(state)).Append("</p>");
        }

        if (seen.Position is not null && item.Positions.Length > 1)
        {
            Operate(made, item, seen.Position, number, busy);
        }

        if (item.Authority?.Permission is { } owner && owner != role.Name && seen.Position is not null)
        {
            made.Append(Html.Button(FormattableString.Invariant($"ask-{number}"), Html.Encode(Say.With($"Ask the {owner}")), "ask", [("what", item.Name)], "btn quiet", $"aria-label=\"{Html.Encode(Say.With($"Ask the {owner} for permission to operate {item.Name}"))}\""));
        }

        return made.Append("</div>").ToString();
    }

    private static void Operate(StringBuilder made, Item item, string now, int number, bool busy)
    {
        string off = busy ? "aria-disabled=\"true\"" : "";
        if (item.Positions.Length <= MostButtons)
        {
            made.Append("<div class=\"positions\" role=\"group\" aria-label=\"").Append(Html.Encode(Words.Capital(item.Name))).Append("\">");
            foreach ((int i, string position) in item.Positions.Index())
            {
                made.Append(Html.Button(FormattableString.Invariant($"op-{number}-{i}"), Html.Encode(PositionWords.Of(item.Name, position)), "operate", [("what", item.Name), ("to", position)], "btn", $"aria-pressed=\"{(position == now ? "true" : "false")}\" {off}".Trim()));
            }

            made.Append("</div>");
            return;
        }

        made.Append("<form class=\"positions\" data-do=\"operate\" data-what=\"").Append(Html.Encode(item.Name)).Append("\"><select id=\"op-").Append(number).Append("\" name=\"to\" aria-label=\"").Append(Html.Encode(Words.Capital(item.Name))).Append("\">");
        foreach (string position in item.Positions)
        {
            made.Append("<option value=\"").Append(Html.Encode(position)).Append(position == now ? "\" selected>" : "\">").Append(Html.Encode(PositionWords.Of(item.Name, position))).Append("</option>");
        }

        made.Append("</select><button class=\"btn\" id=\"opgo-").Append(number).Append("\">").Append(Html.Encode(Say.It("Put it there"))).Append("</button></form>");
    }

    /// <summary>For who reads with their ears: what an eye reads on the scale, no more.</summary>
    private static string Label(Item item, SeenItem seen)
    {
        string name = Words.Capital(item.Name);
        return seen.Shows is { } shows && item.Reading is { } reading ? Say.With($"{name}: {QuantityFormat.Text(shows, reading.Unit, reading.Resolution)}")
            : seen.IsLit is { } lit ? Say.With($"{name}: {(lit ? Say.It("lit") : Say.It("dark"))}")
            : seen.Position is { } position ? Say.With($"{name}: {PositionWords.Of(item.Name, position)}")
            : name;
    }

    /// <summary>Locks, chocks and signals: those that stand here, and those that can be set here.</summary>
    private static string Guards(ClassBook book, string place, ImmutableArray<(string Name, bool IsDrawn)> things, ImmutableArray<SeenGuard> guards)
    {
        StringBuilder made = new();
        foreach ((int i, SeenGuard guard) in guards.Index())
        {
            made.Append("<li><span>").Append(Html.Encode(Say.Begin(Say.With($"{guard.Protection} at {guard.Target}")))).Append(guard.IsOwn ? "" : $" <span class=\"small\">{Html.Encode(Say.It("set by somebody else"))}</span>").Append("</span> ")
                .Append(Html.Button(FormattableString.Invariant($"untag-{i}"), Html.With(Say.It("Take it away"), Say.With($"{guard.Protection} at {guard.Target}")), "take away", [("what", guard.Protection), ("to", guard.Target)], "btn quiet")).Append("</li>");
        }

        HashSet<string> here = [place, .. things.Select(i => i.Name)];
        int number = 0;
        foreach (Protection protection in book.Protections.Values.Where(p => p.Sort != ProtectionSort.Asked).OrderBy(p => p.Span))
        {
            foreach (string target in protection.Targets.Where(t => here.Contains(t) && !guards.Any(g => g.Protection == protection.Name && g.Target == t)))
            {
                made.Append("<li><span>").Append(Html.Encode(Say.Begin(Say.With($"{protection.Name} at {target}")))).Append("</span> ")
                    .Append(Html.Button(FormattableString.Invariant($"tag-{number++}"), Html.With(Say.It("Set it"), Say.With($"{protection.Name} at {target}")), "set", [("what", protection.Name), ("to", target)], "btn quiet")).Append("</li>");
            }
        }

        return made.Length == 0 ? "" : $"<h2>{Html.Encode(Say.It("Locks, chocks, signals"))}</h2><ul>{made}</ul>";
    }
}
