using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Trials.Failures;
using Xunit;

namespace Sightglass.Trials.Tests.Failures;

/// <summary>Every item on the walk answers 'what happens if it fails?' from the models; those that do not are counted, each with its reason.</summary>
public sealed class DemoFailureTests
{
    private static readonly Lazy<Plan> s_plan = new(() => Books.Load("curlew"));

    private static Item[] Met => [.. s_plan.Value.Book.ItemsInOrder.Where(i => !i.Places.IsEmpty)];

    /// <summary>What is warm or full and does not fail by itself, but by what feeds it.</summary>
    private static readonly string[] s_byOthers = ["fuel line", "thermal mass"];

    /// <summary>A panel fails as its breakers do; of what nothing in the models depends on, such as the first aid box, nothing is computed, and the book tells what happens. Both numbers may only fall.</summary>
    [Fact]
    public void Items_OfWhichNothingIsComputed_AnswerByWhatTheyHoldOrByTheBook()
    {
        Item[] silent = [.. Met.Where(i => !s_plan.Value.Items.TryGetValue(i.Name, out ItemPlan? p) || p.Faults.IsEmpty)];
        Item[] told = [.. silent.Where(i => i.Holds.IsEmpty && !s_byOthers.Contains(i.Kind.Name))];
        Assert.Empty(told.Where(i => i.IfItFails.Length == 0).Select(i => i.Name));
        Assert.All(silent.SelectMany(i => i.Holds), held => Assert.NotEmpty(s_plan.Value.Items[held].Faults));
        Assert.True(told.Length <= 17, $"{told.Length}: {string.Join("; ", told.Select(i => i.Name))}");
        Assert.True(silent.Length <= 31, $"{silent.Length}");
    }

    /// <summary>By the legs of the demo: from the rear steps 16 s up the ladder; without it 5.4 m to the machinery steps at 1.3 m/s, 14 s up, 6 + 5 + 5 s aft. Who needs a chock cannot chock.</summary>
    [Theory]
    [InlineData("rear ladders", "cannot be used", "18 s farther from rear steps, right to rear vestibule")]
    [InlineData("chocks", "missing", "cannot be set: wheel chock")]
    [InlineData("oil and fuel absorbent", "missing", "cannot be worked: Fuel the machine from the right side")]
    [InlineData("windshield", "cannot be seen through", "now: nothing is seen through the windshield")]
    [InlineData("emergency window exit", "cannot be used", null)]
    public void Items_OfAccessAndUse_TellWhatIsFartherOrCannotBeDone(string item, string fault, string? told)
    {
        Situation situation = s_plan.Value.Book.Situations["machine that loads"];
        Failure failure = FailureRun.Of(s_plan.Value, situation, [s_plan.Value.Book.Items[item]], SimTime.FromSeconds(5)).Single(f => f.Fault == fault);
        Assert.Equal(told is null, failure.IsHidden);
        Assert.Equal(told, failure.Told().FirstOrDefault(t => t == told));
    }

    /// <summary>Each fault of everything that people meet can be run to the end, and a good part of them shows within half a minute.</summary>
    [Fact]
    public void Items_EachFailed_AreRunToTheEnd()
    {
        Situation situation = s_plan.Value.Book.Situations["machine that loads"];
        ImmutableArray<Failure> all = FailureRun.Of(s_plan.Value, situation, Met, SimTime.FromSeconds(30));
        Assert.Empty(all.Where(f => f.Trouble is not null).Select(f => $"{f.Item.Name}, {f.Fault}: {f.Trouble}"));
        int shown = all.GroupBy(f => f.Item.Name).Count(g => g.Any(f => !f.IsHidden)), items = all.DistinctBy(f => f.Item.Name).Count();
        Assert.True(shown * 3 > items, $"{shown} of {items} items show any failure");
    }
}
