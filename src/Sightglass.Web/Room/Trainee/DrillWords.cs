using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Web.Room.Trainee;

/// <summary>Small turns of phrase about drills.</summary>
internal static class DrillWords
{
    public static string Level(DrillLevel level) => level switch
    {
        DrillLevel.FirstDay => Say.It("First day"),
        DrillLevel.Working => Say.It("Working with it"),
        _ => Say.It("To qualify"),
    };

    public static string Use(Drill drill) => drill.IsQualifying ? Say.It("counts for a qualification") : Say.It("practice");
}
