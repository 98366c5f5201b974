using Sightglass.Basics.Language;
using Sightglass.Basics.Time;
using Sightglass.Book.Language;
using Sightglass.Plant.Plans;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.World.Tests;

/// <summary>A run is told in the language of whoever reads it, and is the same run in all.</summary>
public sealed class JournalLanguageTests
{
    [Fact]
    public void Journal_OfARunMadeInEnglish_IsReadInSpanish()
    {
        (IReadOnlyList<JournalEntry> journal, _) = Run();
        Assert.Contains(journal, j => j.Text == "Instructor puts aft supply valve to closed.");
        Assert.Contains(journal, j => j.Text == "Truth: centre compartment, leak.");
        using (WordsReader.Into(Books.Curlew.Book, Books.FolderOf("curlew"), []).TongueOf("es").Speak())
        {
            string told = string.Join('\n', journal.Select(j => j.Text));
            Assert.Contains("Instructor pone en «cerrada»: válvula de suministro del compartimento trasero.", told, StringComparison.Ordinal);
            Assert.Contains("Verdad: compartimento central, falla «fuga».", told, StringComparison.Ordinal);
            Assert.DoesNotContain("Truth", told, StringComparison.Ordinal);
            Assert.DoesNotContain("puts", told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Trajectory_InAnotherLanguage_IsTheSame()
    {
        ulong english = Run().Hash;
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal(english, Run().Hash);
        }
    }

    [Fact]
    public void Journal_Marked_LeavesNoWordUnsaid()
    {
        (IReadOnlyList<JournalEntry> journal, _) = Run();
        using (Tongue.Marked.Speak())
        {
            Assert.NotEmpty(journal);
            Assert.All(journal, j => Assert.Matches("^⟦.*⟧$", j.Text));
        }
    }

    /// <summary>Kept in English, because cases are counted by it.</summary>
    [Theory]
    [InlineData("aft supply valve is not within reach", "fuera de alcance: aft supply valve")]
    [InlineData("engineer may not operate aft supply valve", "engineer no puede accionar: aft supply valve")]
    [InlineData("fire, without protection", "fire, sin protección")]
    [InlineData("the result did not stay so", "el resultado no se mantuvo")]
    [InlineData("engine starves", "engine starves")]
    public void Mechanism_AsItIsKept_IsSaid(string kept, string says)
    {
        Assert.Equal(kept, new MechanismWords(kept).ToString());
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal(says, new MechanismWords(kept).ToString());
        }
    }

    [Theory]
    [InlineData("road number", "número de locomotora")]
    [InlineData("place of engineer", "lugar de: engineer")]
    [InlineData("leak, chance", "fuga, probabilidad")]
    [InlineData("leak, area", "fuga, área")]
    [InlineData("ambient temperature", "temperatura ambiente")]
    public void Range_AsItIsKept_IsSaid(string kept, string says)
    {
        Assert.Equal(kept, RangeWords.Of(kept));
        using (Tongue.Spanish.Speak())
        {
            Assert.Equal(says, RangeWords.Of(kept));
        }
    }

    private static (IReadOnlyList<JournalEntry> Journal, ulong Hash) Run()
    {
        World world = new(new LaneBank(Books.Curlew), 0) { Journal = [] };
        SituationStart.Bind(Books.Curlew, Books.Curlew.Book.Situations["leaking compartment"], [])!.Apply(world, 1, 0);
        world.Do(new WorldAction.Operate(-1, "aft supply valve", "closed"), SimTime.FromSeconds(1));
        world.RunTo(SimTime.FromSeconds(600));
        return ([.. world.Journal!], world.Hash);
    }
}
