using System.Text.Json;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.Situations;

namespace Sightglass.Training.Tests.Drills;

/// <summary>Issue: nothing that the place does not show is ever sent: all pairs of place and indication.</summary>
public sealed class SightTests
{
    private static readonly Plan s_plan = Books.Curlew;

    /// <summary>At every place of the demo: every item whose place it is, and no other; every sign that is noticed there and holds, and no other.</summary>
    [Fact]
    public void Of_EveryPlace_ShowsWhatIsWithinReachAndNothingElse()
    {
        ClassBook book = s_plan.Book;
        foreach (Place place in book.Places.Values)
        {
            At(place.Name, (world, sight) =>
            {
                Assert.Equal(place.Name, sight.Place);
                Assert.Equal(book.Items.Values.Where(i => i.Places.Contains(place.Name)).Select(i => i.Name).Order(StringComparer.Ordinal), sight.Items.Select(i => i.Name).Order(StringComparer.Ordinal));
                foreach (Sign sign in book.Signs.Values)
                {
                    bool noticed = (sign.Places.IsDefaultOrEmpty || sign.Places.Contains(place.Name)) && world.Value(s_plan.Signs[sign.Name]) >= 0;
                    Assert.Equal(noticed, sight.Signs.Contains(sign.Name));
                }

                foreach (SeenItem seen in sight.Items)
                {
                    Item item = book.Items[seen.Name];
                    Assert.Equal(world.Read(item), seen.Shows);
                    Assert.Equal(item.Positions.Length > 0 && s_plan.Items.TryGetValue(item.Name, out ItemPlan? plan) && plan.Position is not null, seen.Position is not null);
                }

                // What would go over the wire names no item from elsewhere, no fault and no truth.
                string sent = JsonSerializer.Serialize(sight);
                Assert.All(book.Items.Keys.Where(n => !book.Items[n].Places.Contains(place.Name)), n => Assert.DoesNotContain($"\"{n}\"", sent, StringComparison.Ordinal));
                Assert.DoesNotContain("leak", string.Join(' ', sight.Items.Select(i => i.Position)), StringComparison.Ordinal);
            });
        }
    }

    /// <summary>A stuck instrument shows what it shows, not what is: that is what is sent.</summary>
    [Fact]
    public void Of_AStuckGauge_ShowsWhatItShowsNotWhatIs()
    {
        Item gauge = s_plan.Book.Items["cab fuel gauge"];
        double Shown(bool stuck)
        {
            double shown = double.NaN;
            At(gauge.Places[0], (_, sight) => shown = sight.Items.Single(i => i.Name == gauge.Name).Shows!.Value, stuck ? new WorldAction.PutIn(gauge.Name, "stuck", System.Collections.Immutable.ImmutableSortedDictionary<string, double>.Empty) : null, 3600 * 20);
            return shown;
        }

        Assert.True(Shown(stuck: true) > Shown(stuck: false));
    }

    [Fact]
    public void Of_SomebodyOnTheWay_ShowsNothing() => At("cab", (world, sight) =>
    {
        Assert.Null(sight.Place);
        Assert.Equal("rear coupler", sight.Towards);
        Assert.True(sight.IsBusy);
        Assert.Empty(sight.Items);
        Assert.Empty(sight.Signs);
    }, new WorldAction.Walk(0, "rear coupler"), 3);

    private static void At(string place, Action<World.World, Sight> look, WorldAction? act = null, double seconds = 2)
    {
        using LaneBank bank = new(s_plan);
        World.World world = new(bank, 0);
        Situation situation = s_plan.Book.Situations["standing with current"] with { People = [new("mechanical", [place], Basics.Diagnostics.Span.None)] };
        SituationStart.Bind(s_plan, situation, [])!.Apply(world, 1, 0);
        if (act is not null)
        {
            world.Do(act, SimTime.FromSeconds(1));
        }

        bool seen = false;
        world.OnSample = w =>
        {
            seen = true;
            look(w, Sight.Of(w, w.People[0]));
        };
        world.SampleAt(SimTime.FromSeconds(seconds));
        world.RunTo(SimTime.FromSeconds(seconds));
        Assert.True(seen);
    }
}
