using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Time;
using Sightglass.Book;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Tests.Support;
using Sightglass.World.Runs;
using Sightglass.World.Situations;
using Sightglass.World.Tests.Trade;

namespace Sightglass.World.Tests.Air;

/// <summary>A hose that is parted while its cock is open whips whoever stands between, protected or not (common practice, no source).</summary>
public sealed class WhippingHoseTests
{
    private const string Title = "Part the hoses at the rear";

    [Theory]
    [InlineData("open", OutcomeKind.Failed)]
    [InlineData("closed", OutcomeKind.Done)]
    public void Parted_ByACardBetweenTheVehicles_InjuresIfTheCocksAreOpen(string cocks, OutcomeKind expected)
    {
        SourceText card = new("part.card", $"""
            Card: {Title}
            For: conductor; told: engineer

            Must never: brake air is low.
            Done when: brake pipe is charged.

            1. Ask the engineer for protection for going between. Wait for the answer, at most 5 min. If not, stop: no answer.
            2. Go to the rear coupler.
            3. Turn the brake pipe coupling at the rear to parted.
            4. Go to the rear on the right side.
            5. Give back protection.
            """.ReplaceLineEndings("\n") + "\n");
        DiagnosticList found = new();
        ClassBook book = Books.Curlew.Book.Coupled("local train");
        Plan plan = PlanCompiler.Compile(book with { CardTexts = [card] }, found)!;
        ImmutableArray<ProgramChoice> choices = Rig.ChoicesOf(plan, Title);
        using LaneBank bank = new(plan);
        World world = new(bank, 0);
        SituationStart.Bind(plan, plan.Book.Situations["local train, charged"], found)!.Apply(world, 1, 3);
        world.Do(new WorldAction.Operate(-1, "rear brake pipe angle cock", cocks), SimTime.FromSeconds(0.5));
        world.Do(new WorldAction.Operate(-1, "A brake pipe angle cock of car 1", cocks), SimTime.FromSeconds(0.5));
        world.Begin(new CardRun(choices));
        world.RunTo(SimTime.Never);
        Assert.Equal(expected, world.Run!.Outcome.Kind);
        Assert.Equal(expected == OutcomeKind.Failed ? "a rear brake pipe hose under pressure" : "", world.Run.Mechanism);
    }
}
