using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests;

/// <summary>A journal in another language is another table.</summary>
public sealed class JournalWordsTests
{
    private static readonly JournalWords s_german = EnglishJournal.Words with
    {
        ToHeed = "Vorsicht, {role}: {hazard}. {caution}",
        FaultCame = "Wahr ist: {item} hat {fault}.",
        Put = "{who} stellt {item} auf {position}.",
        Instructor = "lehrer",
    };

    [Fact]
    public void Journal_AnotherTable_TellsInItsWords()
    {
        World world = new(new LaneBank(Books.Curlew), 0) { Journal = [], Words = s_german };
        SituationStart.Bind(Books.Curlew, Books.Curlew.Book.Situations["leaking compartment"], [])!.Apply(world, 1, 0);
        world.Do(new WorldAction.Operate(-1, "aft supply valve", "closed"), SimTime.FromSeconds(1));
        world.RunTo(SimTime.FromSeconds(600));
        string told = string.Join('\n', world.Journal!.Select(j => j.Text));
        Assert.Contains("Lehrer stellt aft supply valve auf closed.", told, StringComparison.Ordinal);
        Assert.Contains("Wahr ist: centre compartment hat leak.", told, StringComparison.Ordinal);
        Assert.DoesNotContain("Truth", told, StringComparison.Ordinal);
        Assert.DoesNotContain("puts", told, StringComparison.Ordinal);
    }
}
