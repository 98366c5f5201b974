using Sightglass.Basics.Language;
using Sightglass.World.People;

namespace Sightglass.Web.Room;

/// <summary>Says why somebody cannot begin something.</summary>
internal static class HindranceWords
{
    /// <summary>In words that end a sentence; null where nothing hinders.</summary>
    public static string? Of(Hindrance hindrance) => hindrance switch
    {
        Hindrance.None => null,
        Hindrance.Busy => Say.It("you are at something else"),
        Hindrance.OutOfReach => Say.It("it is out of reach from here"),
        Hindrance.NoWay => Say.It("there is no way for you"),
        Hindrance.Lacks => Say.It("what it needs is not where it is kept"),
        _ => Say.It("that cannot be done"),
    };
}
