using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Training.Drills;
using Sightglass.Web.Live;

namespace Sightglass.Web.Room.Trainee;

/// <summary>
/// All that stands on a trainee's page, in pieces, in the language that is spoken. It is made from what the person sees from where they stand (<see cref="Sight"/>), from what is said by
/// radio and from what is written in the drill for them: nothing else of the world is ever sent.
/// </summary>
internal sealed class TraineeView(TrainingRoom room, Seat seat, TraineeDesk desk)
{
    private readonly PieceMaker _pieces = new();
    private bool _isPrepared;

    /// <summary>The pieces, each after the one that holds it.</summary>
    public ImmutableArray<Fragment> Pieces()
    {
        if (seat.Drill is not { Drill: { } bound, Last: { } look } drill || look.Sights.Length <= seat.Person)
        {
            ImmutableArray<Drill> offered = room.MayPractise ? [.. room.Offered.Where(d => !d.IsQualifying)] : [];
            _pieces.Add("head", "", "", static none => none);
            _pieces.Add("main", "", (seat.Name, room.MayPractise, desk.Refused, new Listed<Drill>(offered)), static of => Waiting(of.Name, of.MayPractise, of.Refused, of.Item4.All));
            _pieces.Add("side", "", "", static none => none);
            return _pieces.All();
        }

        Head(drill, bound, look);
        Sight sight = look.Sights[seat.Person];
        HoldReason held = drill.Session?.Held ?? HoldReason.None;
        if (drill.Session is null || look.IsJudged)
        {
            TraineeSheet.Add(_pieces, drill, bound, look, seat);
        }
        else if (held.HasFlag(HoldReason.Brief))
        {
            TraineeBrief.Add(_pieces, drill, bound);
            Prepare(bound, sight);
        }
        else
        {
            TraineePlace.Add(_pieces, bound, look, sight, seat.Person, desk, held);
            TraineeSide.Add(_pieces, drill, bound, look, sight, seat, desk);
        }

        return _pieces.All();
    }

    /// <summary>While it is being read what it is about, all is made that takes a while: whoever begins does not wait for it.</summary>
    private void Prepare(BoundDrill bound, Sight sight)
    {
        if (!_isPrepared)
        {
            _isPrepared = true;
            _ = Task.Run(() =>
            {
                _ = bound.Drill.WithCards ? TraineeCards.Of(bound.Plan.Book) : [];
                _ = TraineeMap.Of(bound.Plan).Plate(sight.Place ?? sight.Towards ?? "", sight.Roles.Length, sight.Place is null);
            });
        }
    }

    private static string Waiting(string name, bool mayPractise, string? refused, ImmutableArray<Drill> offered)
    {
        StringBuilder page = new();
        page.Append("<div class=\"wait\"><h1>").Append(Html.Encode(name)).Append("</h1><p class=\"lead\">");
        page.Append(Html.Encode(mayPractise ? Say.It("The instructor gives you something to do. Until then you may practise by yourself.") : Say.It("The instructor gives you something to do. Wait here."))).Append("</p>");
        if (refused is { } why)
        {
            page.Append("<p class=\"trouble\" role=\"alert\">").Append(Html.Encode(Say.Begin(why))).Append("</p>");
        }

        foreach (IGrouping<DrillLevel, Drill> level in offered.GroupBy(d => d.Level).OrderBy(g => g.Key))
        {
            page.Append("<h2>").Append(Html.Encode(DrillWords.Level(level.Key))).Append("</h2><ul class=\"offered\">");
            foreach ((int i, Drill drill) in level.Index())
            {
                page.Append("<li><p class=\"name\">").Append(Html.Encode(Words.Capital(drill.Name))).Append("</p><p>").Append(Html.Encode(Say.Book(drill.Aim))).Append("</p>")
                    .Append(Html.Button(FormattableString.Invariant($"take-{(int)level.Key}-{i}"), Html.Encode(Say.It("Practise this")), "practise", [("what", drill.Name)], "btn", $"aria-label=\"{Html.Encode(Say.With($"Practise this: {drill.Name}"))}\"")).Append("</li>");
            }

            page.Append("</ul>");
        }

        return page.Append("</div>").ToString();
    }

    private void Head(RoomDrill drill, BoundDrill bound, DrillLook look)
    {
        bool isOn = drill.Session is { } session && !look.IsOver && !session.Held.HasFlag(HoldReason.Brief);
        _pieces.Add("head", "", (bound, seat.Person, isOn), static of => Header(of.bound, of.Person, of.isOn));
        _pieces.Add("clock", "head", (Now: Words.Clock(look.Now.Seconds), bound.Drill.TimeLimit), static of => $"{of.Now} <span class=\"small\">{Html.Encode(Say.With($"of {Words.Clock(of.TimeLimit)}"))}</span>");
    }

    private static string Header(BoundDrill bound, int person, bool isOn)
    {
        StringBuilder head = new();
        head.Append("<span class=\"what\"><b>").Append(Html.Encode(Words.Capital(bound.Drill.Name))).Append("</b> <span>").Append(Html.Encode(DrillWords.Use(bound.Drill))).Append(", ").Append(Html.Encode(Say.Book(bound.Situation.People[person].Role))).Append("</span></span>");
        head.Append(Html.Slot("clock", "span", $"class=\"clock\" role=\"timer\" aria-label=\"{Html.Encode(Say.It("Time since the start"))}\""));
        if (isOn)
        {
            head.Append(Html.Button("stop", Html.Encode(Say.It("Stop: unsafe")), "stop", null, "btn stop"));
        }

        return head.ToString();
    }
}
