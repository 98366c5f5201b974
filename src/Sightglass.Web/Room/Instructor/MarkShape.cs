using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Room.Instructor;

/// <summary>Draws how a line of an evaluation stands: shape tells it, colour only what is broken.</summary>
internal static class MarkShape
{
    /// <summary>The shape alone, 13 px; its word stands beside it or is said for it.</summary>
    public static MarkupString Of(FallMark mark) => new(
        "<svg class=\"fm\" viewBox=\"0 0 13 13\" width=\"13\" height=\"13\" aria-hidden=\"true\">" + mark switch
        {
            FallMark.Done => "<circle class=\"fm-full\" cx=\"6.5\" cy=\"6.5\" r=\"5.5\"/><path class=\"fm-tick\" d=\"M3.6 6.8l2 2 3.8-4.4\"/>",
            FallMark.UnderWay => "<circle class=\"fm-ring\" cx=\"6.5\" cy=\"6.5\" r=\"5\"/><path class=\"fm-full\" d=\"M6.5 1.5a5 5 0 0 1 0 10z\"/>",
            FallMark.Broken => "<path class=\"fm-bad\" d=\"M6.5 .8l5.7 5.7-5.7 5.7L.8 6.5z\"/><path class=\"fm-tick\" d=\"M4.4 4.4l4.2 4.2m0-4.2l-4.2 4.2\"/>",
            FallMark.Told => "<path class=\"fm-ring\" d=\"M2 6.5h9\"/>",
            _ => "<circle class=\"fm-empty\" cx=\"6.5\" cy=\"6.5\" r=\"5\"/>",
        } + "</svg>");

    /// <summary>What the shape says.</summary>
    public static string Word(FallMark mark) => mark switch
    {
        FallMark.Done => Say.It("done"),
        FallMark.UnderWay => Say.It("under way"),
        FallMark.Broken => Say.It("failed"),
        FallMark.Told => Say.It("help taken"),
        _ => Say.It("not yet"),
    };
}
