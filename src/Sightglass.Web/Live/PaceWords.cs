using Sightglass.Basics.Language;

namespace Sightglass.Web.Live;

/// <summary>What a pace is as a number, and on a button.</summary>
public static class PaceWords
{
    /// <summary>Simulated seconds a second.</summary>
    public static double Rate(this Pace pace) => (int)pace / 2.0;

    /// <summary>As a button says it: <c>×4</c>.</summary>
    public static string Says(this Pace pace) => pace switch
    {
        Pace.Hold => Say.It("Hold"),
        Pace.Half => "×½",
        _ => FormattableString.Invariant($"×{(int)pace / 2}"),
    };
}
