using CsCheck;
using Sightglass.Tests.Support;

namespace Sightglass.World.Tests.Air;

/// <summary>
/// Whatever the train, whatever it begins with, whatever is done to it and whatever breaks: every run ends, no pressure falls below vacuum, and air is neither made nor lost
/// (kernel's contract: to 1e-12 of what there is and has passed). One case in a thousand may be undecided, and is then named. The gate runs 64 cases; ten thousand are
/// <c>./test --explore 157 World</c>, what they came to is kept in bench/results.
/// </summary>
public sealed class AnyTrainTests(ITestOutputHelper output)
{
    private readonly Lock _counting = new();
    private readonly List<string> _undecided = [];
    private readonly List<string> _wrong = [];
    private int _cases;

    [Fact]
    public void AnyTrain_AnySituationDeedsAndFaults_EndsAboveVacuumWithAllItsAir()
    {
        Gen.Int[0, int.MaxValue].Holds(Run, iter: 8);
        output.WriteLine($"{_cases} cases, {_undecided.Count} undecided\n{string.Join('\n', _undecided)}");
        Assert.True(_wrong.Count == 0, string.Join('\n', _wrong));
        Assert.True(_undecided.Count * 1000 <= _cases, string.Join('\n', _undecided));
    }

    /// <summary>
    /// Numbers that exploring found, of the demo as it was and before surroundings changed: in the first three a look or a cut within a step left brake cylinders far below vacuum; in the last the
    /// machines had more switches than a network could arm. What was wrong has tests of its own in the kernel's.
    /// </summary>
    [Theory]
    [InlineData(1657671005)]
    [InlineData(1996791027)]
    [InlineData(1176955707)]
    [InlineData(1919132652)]
    public void AnyTrain_FoundByExploring_IsWell(int number)
    {
        using AnyTrain train = new(number, changing: false);
        Assert.Empty(train.Run());
        Assert.All(train.Worlds, w => Assert.Null(w.Trouble));
    }

    /// <summary>All that is wrong is told together: a number that was drawn has no smaller one to look for.</summary>
    private void Run(int number)
    {
        using AnyTrain train = new(number);
        IReadOnlyList<string> wrong = train.Run();
        lock (_counting)
        {
            _cases += AnyTrain.Cases;
            _wrong.AddRange(wrong);
            _undecided.AddRange(train.Worlds.Where(w => w.Trouble is not null).Select(w => $"{train.Name}, case {w.Lane} after {w.Now}: {w.Trouble}; {train.Story(w.Lane)}"));
        }
    }
}
