using Sightglass.Basics.Language;
using Sightglass.Cards.Story;
using Sightglass.World;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Says what somebody is at, without saying who.</summary>
internal static class DeedWords
{
    public static string Of(WorldAction deed) => deed switch
    {
        WorldAction.Operate o => Say.With($"puts {o.Item} to {PositionWords.Of(o.Item, o.Position)}"),
        WorldAction.Ask a => Say.With($"asks for {a.For}"),
        WorldAction.GiveBack g => Say.With($"gives back {g.Protection}"),
        WorldAction.SetGuard s => Say.With($"sets {s.Protection} at {s.Target}"),
        WorldAction.TakeGuard t => Say.With($"takes {t.Protection} away from {t.Target}"),
        WorldAction.Tell t => Say.With($"tells the {t.Role}: {t.Text}"),
        WorldAction.Report r => Say.With($"reports: {r.Finding}"),
        _ => Say.It("at work"),
    };
}
