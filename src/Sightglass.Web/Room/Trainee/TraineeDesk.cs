using System.Globalization;
using System.Security.Cryptography;
using Sightglass.Basics.Language;
using Sightglass.Book.Model;
using Sightglass.Web.Live;
using Sightglass.World;
using Sightglass.World.People;

namespace Sightglass.Web.Room.Trainee;

/// <summary>Does what a trainee's page asks for, and says what is to be said of it.</summary>
internal sealed class TraineeDesk(TrainingRoom room, Seat seat)
{
    private const int LongestText = 300;

    /// <summary>The card that they hold, by its file's name; null: none.</summary>
    public string? CardInHand { get; private set; }

    /// <summary>What was last asked for and is not theirs: it is done when they ask again.</summary>
    public (string Item, string Position, Breach Breach)? Doubt { get; private set; }

    /// <summary>Why the last wish was not done; null where it was.</summary>
    public string? Refused { get; private set; }

    /// <summary>Does what is asked for.</summary>
    public void Take(TraineeAsk ask)
    {
        Doubt = null;
        Refused = Done(ask);
    }

    private string? Done(TraineeAsk ask)
    {
        string what = Short(ask.What);
        string to = Short(ask.To);
        switch (ask.Do)
        {
            case "practise":
                return room.MayPractise && seat.Drill is null or { Ended: not null } && room.Offered.Any(d => d.Name == what && !d.IsQualifying)
                    ? room.Begin(what, (ulong)RandomNumberGenerator.GetInt32(1, int.MaxValue), 0, [seat], alone: true)
                    : Say.It("that cannot be done now");
            case "leave":
                return seat.Drill is { IsAlone: true, Ended: null } own ? room.End(own) : null;
            case "go":
                return Alone(s => s.Release(HoldReason.Brief | HoldReason.Alone | HoldReason.Stop));
            case "hold":
                return Alone(s => s.Hold(HoldReason.Alone));
            case "pace":
                return Alone(s => s.Wanted = to switch { "4" => Pace.Four, "15" => Pace.Fifteen, "60" => Pace.Sixty, _ => Pace.Real });
            case "back":
                return seat.Drill is { IsAlone: true } mine && double.TryParse(to, CultureInfo.InvariantCulture, out double seconds) && mine.Last is { } last
                    ? room.GoBack(mine, new(Math.Max(0, last.Now.Ticks - Basics.Time.SimTime.FromSeconds(Math.Clamp(seconds, 0, 1e6)).Ticks)))
                    : Say.It("that cannot be done now");
            case "note":
                return room.Note(seat, to);
            case "card":
                CardInHand = what.Length == 0 ? null : what;
                return null;
            case "operate":
                return Operate(what, to, ask.Sure);
            default:
                return seat.Drill?.Session is { } session && Wish(ask.Do, what, to) is { } action ? session.Act(action) : Say.It("that cannot be done now");
        }
    }

    private WorldAction? Wish(string? wish, string what, string to) => wish switch
    {
        "walk" => new WorldAction.Walk(seat.Person, what),
        "ask" => new WorldAction.Ask(seat.Person, what),
        "give back" => new WorldAction.GiveBack(seat.Person, what),
        "set" => new WorldAction.SetGuard(seat.Person, what, to),
        "take away" => new WorldAction.TakeGuard(seat.Person, what, to),
        "tell" when to.Length > 0 => new WorldAction.Tell(seat.Person, what, to),
        "report" when Offered(what) => new WorldAction.Report(seat.Person, what),
        "hint" => new WorldAction.TakeHint(seat.Person),
        "done" => new WorldAction.Declare(seat.Person),
        "stop" => new WorldAction.Stop(seat.Person),
        _ => null,
    };

    private bool Offered(string finding) => seat.Drill?.Drill?.Drill.Reports.Any(r => r.Name == finding) == true;

    /// <summary>What is not theirs they are told of first; then they can.</summary>
    private string? Operate(string name, string position, bool sure)
    {
        if (seat.Drill is not { Session: { } session, Drill: { } drill } || !drill.Plan.Book.Items.TryGetValue(name, out Item? item))
        {
            return Say.It("that cannot be done now");
        }

        // Only what is within reach is spoken of.
        Breach breach = sure || !session.Current.Sights[seat.Person].Items.Any(i => i.Name == name) ? Breach.None : session.Ask(w => World.World.BreachOf(w.People[seat.Person], item));
        if (breach != Breach.None)
        {
            Doubt = (name, position, breach);
            return null;
        }

        return session.Act(new WorldAction.Operate(seat.Person, name, position));
    }

    private string? Alone(Action<DrillSession> act)
    {
        if (seat.Drill is not { IsAlone: true, Session: { } session })
        {
            return Say.It("the instructor has the clock");
        }

        act(session);
        return null;
    }

    private static string Short(string? text)
    {
        string plain = new([.. (text ?? "").Trim().Where(c => !char.IsControl(c))]);
        return plain.Length <= LongestText ? plain : plain[..LongestText];
    }
}
