using Sightglass.Training.Evaluation;

namespace Sightglass.Training.Tests.Drills;

public sealed class AgreementTests
{
    /// <summary>
    /// Check value of the team's notes on procedures and assessment: the table 130, 56, 9, 5 has the shares .675, kappa .022 and AC1 .533. Worked by hand: (186·139 + 14·61)/200² = .6677,
    /// (.675 − .6677)/.3323 = .0220; 2·.8125·.1875 = .3047, (.675 − .3047)/.6953 = .5326. Cohen (1960), Gwet (2008), from memory.
    /// </summary>
    [Fact]
    public void Figures_OfAKnownTable_AreThose()
    {
        Agreement agreement = new(130, 56, 9, 5);
        Assert.Equal((200, 135), (agreement.Of, agreement.Alike));
        Assert.Equal(0.675, agreement.Observed, 12);
        Assert.Equal(0.0220, agreement.Kappa, 4);
        Assert.Equal(0.5326, agreement.Ac1, 4);
    }

    [Fact]
    public void Figures_Alike_AreOneAndOfNothingAreNoNumbers()
    {
        Agreement all = new(7, 0, 0, 3);
        Assert.Equal((1d, 1d, 1d), (all.Observed, all.Kappa, all.Ac1));
        Assert.Equal(1, new Agreement(9, 0, 0, 0).Ac1);
        Assert.Equal(double.NaN, new Agreement(9, 0, 0, 0).Kappa); // nothing beyond chance can be told
        Assert.Equal((double.NaN, double.NaN), (default(Agreement).Kappa, default(Agreement).Ac1));
    }

    [Fact]
    public void Over_Pairs_CountsThemAndAddsUp()
    {
        Agreement pairs = Agreement.Over([(true, true), (true, false), (false, true), (false, false), (true, true)]);
        Assert.Equal(new Agreement(2, 1, 1, 1), pairs);
        Assert.Equal(new Agreement(3, 1, 1, 2), pairs + new Agreement(1, 0, 0, 1));
    }
}
