using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Plant.Plans;
using Sightglass.Training.Routes;

namespace Sightglass.Training.Tests.Routes;

public sealed class RouteSearchTests(ITestOutputHelper output)
{
    private const int Cases = 300;

    /// <summary>200 random small cases and more against trying everything: places, closed and dangerous ones, choices, order, an end or none.</summary>
    [Fact]
    public void Find_RandomSmallCases_AsShortAsTheBestOfAll()
    {
        int walks = 0;
        for (int seed = 0; seed < Cases; seed++)
        {
            Random chance = new(seed);
            ClassBook book = RandomMachine.Book(chance, chance.Next(3, 13));
            RouteProblem problem = RandomMachine.Problem(chance, book, chance.Next(1, 7));
            (int Dangers, double Seconds)? best = problem.Map.IsClosed(problem.Start) ? null : AllWalks.Best(problem);
            FoundRoute? found = RouteSearch.Find(problem);
            Assert.Equal(best is null, found is null);
            if (found is not null)
            {
                walks++;
                AssertSound(problem, found);
                Assert.Equal(best!.Value.Seconds, found.Seconds, 1e-9);
                Assert.Equal(best.Value.Dangers, found.Steps.Skip(1).Count(s => problem.Map.IsDangerous(s.Place)));
                Assert.True(found.IsShortest);
            }
        }

        Assert.True(walks > 200, $"only {walks} cases had a walk");
    }

    /// <summary>What is done for many things, on few: never shorter than the best of all, nearly always as short, and the bound lies below.</summary>
    [Fact]
    public void FindTour_RandomSmallCases_NearlyAlwaysTheBestAndItsBoundHolds()
    {
        (int walks, int shortest, int known) = (0, 0, 0);
        for (int seed = 0; seed < Cases; seed++)
        {
            Random chance = new(1000 + seed);
            ClassBook book = RandomMachine.Book(chance, chance.Next(3, 13));
            RouteProblem problem = RandomMachine.Problem(chance, book, chance.Next(1, 7));
            problem = problem with { Wanted = [.. problem.Wanted.Select(w => w.RemoveAll(problem.Map.IsClosed))] };
            if (problem.Wanted.Any(w => w.IsEmpty) || problem.Map.IsClosed(problem.Start) || AllWalks.Best(problem) is not { } best)
            {
                continue;
            }

            (List<int> places, List<bool> stops, double least) = TourSearch.Find(problem, RouteGroups.Of(problem))!.Value;
            FoundRoute tour = FoundRoute.Of(problem, places, stops, least);
            AssertSound(problem, tour);
            (int, double) got = (tour.Steps.Skip(1).Count(s => problem.Map.IsDangerous(s.Place)), Math.Round(tour.Seconds, 9));
            Assert.True(got.CompareTo((best.Dangers, Math.Round(best.Seconds, 9))) >= 0, $"case {seed}: {got} is better than the best, {best}");
            Assert.True(least <= best.Seconds + 1e-6 || got.Item1 > best.Dangers, $"case {seed}: the bound {least} lies above {best.Seconds}");
            walks++;
            shortest += got.Item1 == best.Dangers && got.Item2 <= best.Seconds + 1e-6 ? 1 : 0;
            known += tour.IsShortest ? 1 : 0;
        }

        output.WriteLine($"{walks} walks, {shortest} as short as can be, {known} known to be so by their bound");
        Assert.True(walks > 150 && shortest >= walks * 97 / 100, $"{shortest} of {walks}");
    }

    /// <summary>The demo's whole machine: more things than the exact search takes.</summary>
    [Fact]
    public void Find_WholeDemoMachine_WithinAFewPercentOfItsBound()
    {
        ClassBook book = Books.Curlew.Book;
        RouteMap map = new(new WayTable(book), []);
        ImmutableArray<ImmutableArray<int>> wanted = [.. book.Items.Values.Where(i => !i.Places.IsEmpty).Select(i => i.Places.Select(map.IndexOf).ToImmutableArray())];
        RouteProblem problem = new(map, map.IndexOf("cab steps, right"), map.IndexOf("cab steps, right"), wanted, []);
        FoundRoute walk = RouteSearch.Find(problem)!;
        AssertSound(problem, walk);
        output.WriteLine($"{walk.Metres:0} m, {walk.Seconds:0} s, at least {walk.Least:0} s: {string.Join(" > ", walk.Steps.Select(s => map.Places[s.Place].Name + (s.Shown.IsEmpty ? "" : $" ({s.Shown.Length})")))}");
        Assert.True(walk.Least > 0.9 * walk.Seconds, $"{walk.Seconds} s, bound {walk.Least} s");
        Assert.Equal(walk.Steps.Select(s => s.Place), RouteSearch.Find(problem)!.Steps.Select(s => s.Place));
    }

    [Fact]
    public void Find_OrderInACircleOrAClosedPlace_NoWalk()
    {
        ClassBook book = Books.Curlew.Book;
        RouteMap map = new(new WayTable(book), ["fuel panel, right"]);
        int start = map.IndexOf("cab steps, right");
        Assert.Null(RouteSearch.Find(new(map, start, null, [[map.IndexOf("fuel panel, right")]], [])));
        Assert.Null(RouteSearch.Find(new(map, start, null, [[map.IndexOf("cab")], [map.IndexOf("rear coupler")]], [(0, 1), (1, 0)])));
        Assert.NotNull(RouteSearch.Find(new(map, start, null, [[map.IndexOf("tank aft, right")]], [])));
    }

    /// <summary>Everything is shown once, at one of its places, in its order; each step is joined to the next; nobody passes where a way can only end.</summary>
    private static void AssertSound(RouteProblem problem, FoundRoute walk)
    {
        Assert.Equal(problem.Start, walk.Steps[0].Place);
        Assert.True(problem.End is null || problem.End == walk.Steps[^1].Place);
        Assert.Equal(Enumerable.Range(0, problem.Wanted.Length), walk.Steps.SelectMany(s => s.Shown).Order());
        List<int> order = [.. walk.Steps.SelectMany(s => s.Shown)];
        Assert.All(problem.Order, o => Assert.True(order.IndexOf(o.First) < order.IndexOf(o.Then)));
        for (int i = 0; i < walk.Steps.Length; i++)
        {
            RouteStep step = walk.Steps[i];
            Assert.False(problem.Map.IsClosed(step.Place));
            Assert.All(step.Shown, thing => Assert.Contains(step.Place, problem.Wanted[thing]));
            Assert.True(i == 0 || problem.Map.JoinedTo(walk.Steps[i - 1].Place).Any(j => j.To == step.Place && j.Seconds == step.Seconds));
            Assert.True(i == 0 || i == walk.Steps.Length - 1 || !step.Shown.IsEmpty || !problem.Map.OnlyEndsAt(step.Place));
        }
    }
}
